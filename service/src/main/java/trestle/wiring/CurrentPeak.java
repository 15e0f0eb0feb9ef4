package trestle.wiring;

import trestle.numeric.Guard;

/**
 * A short peak on top of the continuous current.
 *
 * @param currentA current during the peak, A, not negative
 * @param durationS its duration, s, above 0
 */
public record CurrentPeak(double currentA, double durationS) {
    /** Checks the physics. */
    public CurrentPeak {
        Guard.notNegative("peakCurrentA", currentA);
        Guard.positive("peakDurationS", durationS);
    }
}
