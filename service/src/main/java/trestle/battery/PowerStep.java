package trestle.battery;

import trestle.numeric.Guard;

/**
 * A power held for a time.
 *
 * @param powerW power at the end of the leads, W, not negative
 * @param durationS how long, s, above 0
 */
public record PowerStep(double powerW, double durationS) {
    /** Checks the physics. */
    public PowerStep {
        Guard.notNegative("powerW", powerW);
        Guard.positive("durationS", durationS);
    }
}
