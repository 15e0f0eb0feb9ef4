package trestle.flight;

import trestle.numeric.Guard;

/**
 * A constant power for a time.
 *
 * @param powerW power, W
 * @param durationS duration, s
 */
public record Step(double powerW, double durationS) {
    /** Checks the physics. */
    public Step {
        Guard.positive("powerW", powerW);
        Guard.notNegative("durationS", durationS);
    }
}
