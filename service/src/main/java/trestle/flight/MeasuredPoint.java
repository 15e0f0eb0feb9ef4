package trestle.flight;

import trestle.numeric.Guard;

/**
 * One measured point of level flight.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param powerW pack power, systems included, W
 */
public record MeasuredPoint(double airspeedMPerS, double powerW) {
    /** Checks the physics. */
    public MeasuredPoint {
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.positive("powerW", powerW);
    }
}
