package trestle.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import trestle.finding.Judge;
import trestle.finding.Judgement;

/**
 * How a block is covered.
 *
 * @param sampleM ground under one pixel, m
 * @param footprintAcrossM ground that a photo shows across the track, m
 * @param footprintAlongM along the track, m
 * @param passes the lines: one pass, or two that cross
 * @param best the pass that takes least time
 * @param fastestMPerS fastest ground speed on a line, m/s
 * @param slowestMPerS slowest, m/s; 0 or below where the wind is too strong
 * @param intervalS time between photos at the fastest ground speed, s
 * @param blurPixels way over the ground during an exposure, in pixels; empty where the exposure is not known
 * @param flights flights at the power that is given; empty where energy is not looked at
 * @param flightsAtHighPower flights at the power that nine of ten stay below; empty where it is not known
 * @param judgement what is to be said of it
 */
public record SurveyCoverage(
        double sampleM,
        double footprintAcrossM,
        double footprintAlongM,
        List<Pass> passes,
        Pass best,
        double fastestMPerS,
        double slowestMPerS,
        double intervalS,
        OptionalDouble blurPixels,
        Optional<List<SurveyFlight>> flights,
        Optional<List<SurveyFlight>> flightsAtHighPower,
        Judgement judgement) {
    /** Copies the list. */
    public SurveyCoverage {
        passes = List.copyOf(passes);
    }

    /**
     * Works out a survey.
     *
     * @param task the question
     * @return the answer
     */
    public static SurveyCoverage of(SurveyTask task) {
        Pass best = Direction.best(task);
        Pass first = task.directionRad().isPresent()
                ? Pass.of(task, task.directionRad().getAsDouble())
                : best;
        if (first.timeS() < best.timeS()) {
            best = first;
        }
        List<Pass> passes = new ArrayList<>(List.of(first));
        if (task.crosshatch()) {
            passes.add(Pass.of(task, first.directionRad() + Math.PI / 2));
        }
        Flying flying = task.flying();
        double fastest = passes.stream()
                .mapToDouble(pass -> flying.fastestMPerS(pass.directionRad()))
                .max()
                .orElseThrow();
        double slowest = passes.stream()
                .mapToDouble(pass -> flying.slowestMPerS(pass.directionRad()))
                .min()
                .orElseThrow();
        boolean flyable = slowest > 0;
        Camera camera = task.camera();
        SurveyCoverage plain = new SurveyCoverage(
                camera.sampleM(task.heightM()),
                camera.footprintAcrossM(task.heightM()),
                camera.footprintAlongM(task.heightM()),
                passes,
                best,
                fastest,
                slowest,
                task.betweenPhotosM() / Math.max(fastest, task.airspeedMPerS() * 1e-3),
                camera.exposureS().stream()
                        .map(s -> s * Math.max(0, fastest) / camera.sampleAlongM(task.heightM()))
                        .findFirst(),
                flyable ? task.energy().map(e -> Flights.of(task, e, passes, e.cruisePowerW())) : Optional.empty(),
                flyable
                        ? task.energy()
                                .filter(e -> e.highPowerW().isPresent())
                                .map(e -> Flights.of(
                                        task, e, passes, e.highPowerW().getAsDouble()))
                        : Optional.empty(),
                new Judge().judgement());
        Judge judge = new Judge();
        SurveyChecks.judge(task, plain, judge);
        return new SurveyCoverage(
                plain.sampleM,
                plain.footprintAcrossM,
                plain.footprintAlongM,
                passes,
                best,
                fastest,
                slowest,
                plain.intervalS,
                plain.blurPixels,
                plain.flights,
                plain.flightsAtHighPower,
                judge.judgement());
    }

    /** Whether every line can be flown in the wind. */
    public boolean flyable() {
        return slowestMPerS > 0;
    }

    /** Every line, in the order in which they are flown. */
    public List<Line> lines() {
        return passes.stream().flatMap(pass -> pass.lines().stream()).toList();
    }

    /** Photos in all. */
    public int photos() {
        return passes.stream().mapToInt(Pass::photos).sum();
    }

    /** Length of the lines, m. */
    public double lengthM() {
        return passes.stream().mapToDouble(Pass::lengthM).sum();
    }

    /** Time on the lines, s. */
    public double lineS() {
        return passes.stream().mapToDouble(Pass::lineS).sum();
    }

    /** Time between lines, s. */
    public double turnS() {
        return passes.stream().mapToDouble(Pass::turnS).sum();
    }

    /**
     * The ends of a line on the ground.
     *
     * @param task the survey
     * @param line one of its lines
     * @return from and to; empty for a block that lies nowhere
     */
    public static Optional<List<Position>> onTheGround(SurveyTask task, Line line) {
        Optional<Position> from = task.block()
                .position(new Coordinate(line.fromM().get(0), line.fromM().get(1)));
        Optional<Position> to = task.block()
                .position(new Coordinate(line.toM().get(0), line.toM().get(1)));
        return from.flatMap(a -> to.map(b -> List.of(a, b)));
    }
}
