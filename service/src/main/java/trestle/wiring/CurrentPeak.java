package trestle.wiring;

import trestle.numeric.Guard;

/**
 * A short peak on top of the continuous current.
 *
 * @param currentA current during the peak, A, 0 to 100 000
 * @param durationS its duration, s, 0.000 001 to 100 000
 */
public record CurrentPeak(double currentA, double durationS) {
    private static final double MOST_CURRENT_A = 1e5;
    private static final double SHORTEST_S = 1e-6;

    /** More than a day is not a peak. */
    private static final double LONGEST_S = 1e5;

    /** Checks the physics. */
    public CurrentPeak {
        Guard.within("peakCurrentA", currentA, 0, MOST_CURRENT_A);
        Guard.within("peakDurationS", durationS, SHORTEST_S, LONGEST_S);
    }
}
