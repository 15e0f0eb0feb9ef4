package trestle.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Lines over a block in one direction: each strip as wide as the spacing, its line along its middle for as far as the
 * block reaches into it. A strip that a hole divides has a line on each side.
 */
final class Lines {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private Lines() {}

    /** A stretch of a strip, along x. */
    private record Stretch(double fromM, double toM) {}

    static List<Line> over(Block block, double directionRad, LineSpacing spacing) {
        Geometry turned = block.turned(directionRad);
        Envelope around = turned.getEnvelopeInternal();
        int strips = spacing.strips(around.getHeight());
        double middle = (around.getMinY() + around.getMaxY()) / 2;
        List<Line> lines = new ArrayList<>();
        boolean onward = true;
        for (int strip = 0; strip < strips; strip++) {
            double y = middle + (strip - (strips - 1) / 2.0) * spacing.betweenLinesM();
            List<Stretch> stretches = stretches(turned, around, y, spacing.betweenLinesM() / 2);
            if (!onward) {
                Collections.reverse(stretches);
            }
            for (Stretch stretch : stretches) {
                lines.add(line(stretch, y, strip, onward, directionRad, spacing));
            }
            onward = stretches.isEmpty() == onward;
        }
        return lines;
    }

    /** Photos go beyond the ends as far as the plan has it, evenly about the stretch. */
    private static Line line(
            Stretch stretch, double y, int strip, boolean onward, double directionRad, LineSpacing spacing) {
        int photos = spacing.photos(stretch.toM - stretch.fromM);
        double half = (photos - 1) * spacing.betweenPhotosM() / 2;
        double middle = (stretch.fromM + stretch.toM) / 2;
        Coordinate first = Block.back(new Coordinate(middle - half, y), directionRad);
        Coordinate last = Block.back(new Coordinate(middle + half, y), directionRad);
        Coordinate from = onward ? first : last;
        Coordinate to = onward ? last : first;
        return new Line(List.of(from.x, from.y), List.of(to.x, to.y), strip, photos);
    }

    private static List<Stretch> stretches(Geometry turned, Envelope around, double y, double halfM) {
        Geometry strip =
                SHAPES.toGeometry(new Envelope(around.getMinX() - 1, around.getMaxX() + 1, y - halfM, y + halfM));
        Geometry inside = turned.intersection(strip);
        List<Stretch> parts = new ArrayList<>();
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            Envelope part = inside.getGeometryN(i).getEnvelopeInternal();
            if (!part.isNull()) {
                parts.add(new Stretch(part.getMinX(), part.getMaxX()));
            }
        }
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
