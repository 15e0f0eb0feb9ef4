package trestle.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Between which ratings a blade fuse holds what a run carries and still protects its wire. Times to open at a share of
 * the rating are those of ISO 8820-3, from memory: 110 % for 100 h at least, 135 % from 0.75 to 600 s, 200 % from 0.15
 * to 5 s, 350 % from 0.04 to 0.5 s.
 *
 * @param leastA the smallest rating that carries the current, A
 * @param greatestA the largest rating that protects the wire, A
 */
public record FuseWindow(double leastA, double greatestA) {
    /** Ratings that are sold, A: from memory. */
    static final List<Double> USUAL_RATINGS_A =
            List.of(1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 80.0, 100.0);

    /** Share of its rating that a fuse carries for good, warm and next to others. Common practice, no source. */
    static final double CONTINUOUS = 0.75;

    /** What a fuse may carry for ten minutes before it opens, a share of its rating. */
    static final double OPENS_AT = 1.35;

    /** A peak up to so long is carried at so much of the rating. */
    private record Carried(double longestS, double share) {}

    /** Between these shares nobody knows when it opens. */
    private static final List<Carried> PEAKS =
            List.of(new Carried(0.04, 3.5), new Carried(0.15, 2.0), new Carried(0.75, 1.35));

    private static final double FOR_GOOD = 1.1;

    /**
     * The window of a run in a wire.
     *
     * @param run what it carries
     * @param ampacityA current of the whole run at which the insulation reaches its rating, A
     * @return the window; empty inside where the least is above the greatest
     */
    public static FuseWindow of(WireRun run, double ampacityA) {
        double peakA = run.peak()
                .map(peak -> peak.currentA() / carried(peak.durationS()))
                .orElse(0.0);
        return new FuseWindow(Math.max(run.currentA() / CONTINUOUS, peakA), ampacityA / OPENS_AT);
    }

    /** Share of its rating that a fuse is sure to carry in a peak of so long, s. */
    static double carried(double durationS) {
        return PEAKS.stream()
                .filter(peak -> durationS <= peak.longestS())
                .mapToDouble(Carried::share)
                .findFirst()
                .orElse(FOR_GOOD);
    }

    /**
     * The fuse to take.
     *
     * @return the smallest usual rating inside, A; empty where there is none
     */
    public OptionalDouble recommendedA() {
        return USUAL_RATINGS_A.stream()
                .mapToDouble(Double::doubleValue)
                .filter(rating -> rating >= leastA && rating <= greatestA)
                .findFirst();
    }

    /**
     * The thinnest wire for which there is a fuse.
     *
     * @param run what it carries
     * @param candidates sizes on offer, thinnest first
     * @return the first that meets the task and leaves room for a fuse; empty where none does
     */
    static Optional<GaugeAnswer> thinnest(WireRun run, List<GaugeAnswer> candidates) {
        return candidates.stream()
                .filter(GaugeAnswer::meets)
                .filter(answer -> of(run, answer.ampacityA()).recommendedA().isPresent())
                .findFirst();
    }
}
