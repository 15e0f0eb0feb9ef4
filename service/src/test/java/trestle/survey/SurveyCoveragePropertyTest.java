package trestle.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** What holds for any block, wind and direction. */
class SurveyCoveragePropertyTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double LATITUDE = 53.6;
    private static final double LONGITUDE = 8.2;

    private static Camera camera() {
        return new Camera(0.0235, 0.0156, 6000, 4000, 0.016, OptionalDouble.of(0.8), OptionalDouble.of(1e-3));
    }

    private static SurveyTask task(Block block, OptionalDouble directionRad, Wind wind, boolean crosshatch) {
        return new SurveyTask(
                camera(),
                100,
                0.75,
                0.65,
                1,
                block,
                directionRad,
                15,
                wind,
                Math.toRadians(25),
                crosshatch,
                Optional.empty());
    }

    /** A star about a middle, with a smaller one cut out of it. */
    private static List<List<Position>> rings(Random random) {
        int corners = 4 + random.nextInt(9);
        double size = 0.001 + 0.006 * random.nextDouble();
        List<List<Position>> rings = new ArrayList<>();
        rings.add(ring(random, corners, size, 0.5));
        if (random.nextBoolean()) {
            rings.add(ring(random, 5, 0.3 * size, 0.6));
        }
        return rings;
    }

    private static List<Position> ring(Random random, int corners, double size, double least) {
        List<Position> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double radius = size * (least + (1 - least) * random.nextDouble());
            ring.add(new Position(LONGITUDE + 1.6 * radius * Math.cos(angle), LATITUDE + radius * Math.sin(angle)));
        }
        ring.add(ring.get(0));
        return ring;
    }

    private static Polygon polygon(Block block) {
        List<LinearRing> rings = block.outline().stream()
                .map(ring -> SHAPES.createLinearRing(ring.stream()
                        .map(corner -> new Coordinate(corner[0], corner[1]))
                        .toArray(Coordinate[]::new)))
                .toList();
        return SHAPES.createPolygon(rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
    }

    @Property(tries = 150)
    void noPointOfTheBlockIsFurtherThanHalfASpacingFromALine(
            @ForAll @LongRange(min = 0) long seed, @ForAll @DoubleRange(min = 0, max = 3.14) double directionRad) {
        Random random = new Random(seed);
        Block block = Block.of(rings(random));
        SurveyTask task = task(block, OptionalDouble.of(directionRad), Wind.STILL, false);
        List<LineSegment> lines = Pass.of(task, directionRad).lines().stream()
                .map(line -> new LineSegment(
                        line.fromM().get(0),
                        line.fromM().get(1),
                        line.toM().get(0),
                        line.toM().get(1)))
                .toList();
        Polygon polygon = polygon(block);
        var around = polygon.getEnvelopeInternal();
        for (int i = 0; i < 200; i++) {
            Coordinate point = new Coordinate(
                    around.getMinX() + random.nextDouble() * around.getWidth(),
                    around.getMinY() + random.nextDouble() * around.getHeight());
            if (polygon.contains(SHAPES.createPoint(point))) {
                double distance = lines.stream()
                        .mapToDouble(line -> line.distance(point))
                        .min()
                        .orElseThrow();
                assertThat(distance).isLessThanOrEqualTo(task.betweenLinesM() / 2 + 1e-6);
            }
        }
    }

    /** The library's overlay of a block and a strip reaches as far along it. */
    @Property(tries = 200)
    void aStripIsCutAsTheLibraryCutsIt(
            @ForAll @LongRange(min = 0) long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double place,
            @ForAll @DoubleRange(min = 1, max = 200) double widthM) {
        Polygon polygon = polygon(Block.of(rings(new Random(seed))));
        var around = polygon.getEnvelopeInternal();
        double from = around.getMinY() - widthM + place * (around.getHeight() + widthM);
        var strip = SHAPES.toGeometry(new org.locationtech.jts.geom.Envelope(
                around.getMinX() - 1, around.getMaxX() + 1, from, from + widthM));
        var inside = polygon.intersection(strip);
        if (inside.getArea() < 1e-3) {
            return;
        }
        List<Edges.Stretch> cut = Edges.of(polygon).stretches(from, from + widthM);
        var reach = inside.getEnvelopeInternal();
        assertThat(cut.get(0).fromM()).isCloseTo(reach.getMinX(), within(1e-6));
        assertThat(cut.get(cut.size() - 1).toM()).isCloseTo(reach.getMaxX(), within(1e-6));
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            var part = inside.getGeometryN(i).getEnvelopeInternal();
            assertThat(cut)
                    .anyMatch(stretch ->
                            stretch.fromM() <= part.getMinX() + 1e-6 && stretch.toM() >= part.getMaxX() - 1e-6);
        }
    }

    @Property(tries = 60)
    void flightsHaveEveryLineOnceAndKeepTheirReserve(
            @ForAll @LongRange(min = 0) long seed, @ForAll @DoubleRange(min = 20, max = 300) double usableWh) {
        Block block = Block.of(rings(new Random(seed)));
        SurveyEnergy energy = new SurveyEnergy(
                140,
                OptionalDouble.of(170),
                usableWh * 3600,
                0.25,
                5 * 3600,
                Optional.of(new Position(LONGITUDE + 0.004, LATITUDE)),
                0);
        SurveyTask plain = task(block, OptionalDouble.empty(), new Wind(4, 2), false);
        SurveyTask task = new SurveyTask(
                plain.camera(),
                100,
                0.75,
                0.65,
                1,
                block,
                OptionalDouble.empty(),
                15,
                new Wind(4, 2),
                0.4,
                false,
                Optional.of(energy));
        SurveyCoverage found = SurveyCoverage.of(task);
        List<SurveyFlight> flights = found.flights().orElseThrow();
        boolean fits = flights.stream().allMatch(flight -> flight.energyJ() <= energy.availableJ());
        int next = 0;
        for (SurveyFlight flight : flights) {
            assertThat(flight.firstLine()).isEqualTo(next);
            next = flight.lastLine() + 1;
        }
        if (fits) {
            assertThat(next).isEqualTo(found.lines().size());
            List<SurveyFlight> high = found.flightsAtHighPower().orElseThrow();
            if (high.stream().allMatch(flight -> flight.energyJ() <= energy.availableJ())) {
                assertThat(high.size()).isGreaterThanOrEqualTo(flights.size());
            }
        } else {
            assertThat(found.judgement().stops()).contains("survey-line-too-long");
        }
    }
}
