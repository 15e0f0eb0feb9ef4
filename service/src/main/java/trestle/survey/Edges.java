package trestle.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LinearRing;

/**
 * The edges of a valid polygon, and for how far along x it reaches into a strip along x. The general overlay of the library
 * gives the same, and takes forty times as long; the search for a direction asks some thousand times.
 */
final class Edges {
    /** A stretch of a strip, along x, m. */
    record Stretch(double fromM, double toM) {}

    private record Edge(double x1, double y1, double x2, double y2) {
        boolean spans(double y) {
            return (y1 < y) != (y2 < y);
        }

        double x(double y) {
            return x1 + (x2 - x1) * (y - y1) / (y2 - y1);
        }
    }

    private final List<Edge> edges = new ArrayList<>();

    private Edges() {}

    static Edges of(Geometry polygon) {
        Edges all = new Edges();
        polygon.apply((GeometryComponentFilter) part -> {
            if (part instanceof LinearRing ring) {
                Coordinate[] corners = ring.getCoordinates();
                for (int i = 1; i < corners.length; i++) {
                    all.edges.add(new Edge(corners[i - 1].x, corners[i - 1].y, corners[i].x, corners[i].y));
                }
            }
        });
        return all;
    }

    /**
     * Where the polygon lies between two heights: between those of two neighbouring corners it is trapezia, each of which
     * reaches from the lesser of its left ends to the greater of its right ones.
     *
     * @param from lower height, m
     * @param to upper height, m
     * @return stretches that do not touch, by x
     */
    List<Stretch> stretches(double from, double to) {
        double[] heights = DoubleStream.concat(
                        DoubleStream.of(from, to),
                        edges.stream().mapToDouble(Edge::y1).filter(y -> y > from && y < to))
                .sorted()
                .distinct()
                .toArray();
        List<Stretch> parts = new ArrayList<>();
        for (int i = 1; i < heights.length; i++) {
            trapezia(heights[i - 1], heights[i], parts);
        }
        return apart(parts);
    }

    private void trapezia(double below, double above, List<Stretch> parts) {
        double middle = (below + above) / 2;
        List<Edge> crossed = edges.stream()
                .filter(edge -> edge.spans(middle))
                .sorted(Comparator.comparingDouble(edge -> edge.x(middle)))
                .toList();
        for (int k = 1; k < crossed.size(); k += 2) {
            Edge left = crossed.get(k - 1);
            Edge right = crossed.get(k);
            parts.add(new Stretch(Math.min(left.x(below), left.x(above)), Math.max(right.x(below), right.x(above))));
        }
    }

    private static List<Stretch> apart(List<Stretch> parts) {
        parts.sort(Comparator.comparingDouble(Stretch::fromM));
        List<Stretch> apart = new ArrayList<>();
        for (Stretch part : parts) {
            int last = apart.size() - 1;
            if (last >= 0 && part.fromM <= apart.get(last).toM) {
                apart.set(last, new Stretch(apart.get(last).fromM, Math.max(apart.get(last).toM, part.toM)));
            } else {
                apart.add(part);
            }
        }
        return apart;
    }
}
