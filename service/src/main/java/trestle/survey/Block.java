package trestle.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.valid.IsValidOp;

/** The ground to be covered, in its local plane; holes are not covered. */
public final class Block {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** A block with less area than this, over the square of its reach, is no block. */
    private static final double THINNEST = 1e-5;

    private final Polygon shape;
    private final Optional<LocalPlane> plane;

    private Block(Polygon shape, Optional<LocalPlane> plane) {
        this.shape = shape;
        this.plane = plane;
    }

    /**
     * A polygon on the ground.
     *
     * @param rings the outer ring, then the holes; each closed, of four positions or more
     * @return the block
     */
    public static Block of(List<List<Position>> rings) {
        LocalPlane plane = LocalPlane.about(rings.get(0).subList(1, rings.get(0).size()));
        List<LinearRing> shapes = new ArrayList<>();
        for (List<Position> ring : rings) {
            Coordinate[] corners = ring.stream().map(plane::of).toArray(Coordinate[]::new);
            corners[corners.length - 1] = corners[0].copy();
            shapes.add(SHAPES.createLinearRing(corners));
        }
        LinearRing[] holes = shapes.subList(1, shapes.size()).toArray(LinearRing[]::new);
        return new Block(SHAPES.createPolygon(shapes.get(0), holes), Optional.of(plane));
    }

    /**
     * A square of an area, where no more is known.
     *
     * @param areaM2 area, m², above 0
     * @return the block
     */
    public static Block square(double areaM2) {
        double half = Math.sqrt(areaM2) / 2;
        return new Block(
                SHAPES.createPolygon(new Coordinate[] {
                    new Coordinate(-half, -half),
                    new Coordinate(half, -half),
                    new Coordinate(half, half),
                    new Coordinate(-half, half),
                    new Coordinate(-half, -half)
                }),
                Optional.empty());
    }

    /**
     * What is wrong with the shape.
     *
     * @return why it is no polygon; empty where it is one
     */
    public Optional<String> fault() {
        IsValidOp valid = new IsValidOp(shape);
        if (!valid.isValid()) {
            return Optional.of(valid.getValidationError().getMessage().toLowerCase(java.util.Locale.ROOT));
        }
        return shape.getArea() > THINNEST * reachM() * reachM() ? Optional.empty() : Optional.of("it is a line");
    }

    /**
     * Its area, holes not counted.
     *
     * @return area, m²
     */
    public double areaM2() {
        return shape.getArea();
    }

    /**
     * Greatest distance of a corner from the middle.
     *
     * @return distance, m
     */
    public double reachM() {
        double reach = 0;
        for (Coordinate corner : shape.getCoordinates()) {
            reach = Math.max(reach, Math.hypot(corner.x, corner.y));
        }
        return reach;
    }

    /**
     * Corners of all rings.
     *
     * @return how many
     */
    public int corners() {
        return shape.getNumPoints();
    }

    /**
     * The outline, ring by ring.
     *
     * @return corners, x east and y north of the middle, m
     */
    public List<List<double[]>> outline() {
        List<List<double[]>> rings = new ArrayList<>();
        rings.add(ring(shape.getExteriorRing()));
        for (int i = 0; i < shape.getNumInteriorRing(); i++) {
            rings.add(ring(shape.getInteriorRingN(i)));
        }
        return rings;
    }

    private static List<double[]> ring(Geometry ring) {
        List<double[]> corners = new ArrayList<>();
        for (Coordinate corner : ring.getCoordinates()) {
            corners.add(new double[] {corner.x, corner.y});
        }
        return corners;
    }

    /** Turned so that lines of a direction lie along x. */
    Geometry turned(double directionRad) {
        return turning(directionRad).transform(shape);
    }

    /** A direction clockwise from north is π/2 less it counterclockwise from east. */
    private static AffineTransformation turning(double directionRad) {
        return AffineTransformation.rotationInstance(directionRad - Math.PI / 2);
    }

    static Coordinate back(Coordinate turned, double directionRad) {
        return turning(-directionRad + Math.PI).transform(turned, new Coordinate());
    }

    /** On the ground; empty for a block that lies nowhere. */
    Optional<Position> position(Coordinate place) {
        return plane.map(known -> known.back(place));
    }

    /** In the plane; empty for a block that lies nowhere. */
    Optional<Coordinate> place(Position position) {
        return plane.map(known -> known.of(position));
    }
}
