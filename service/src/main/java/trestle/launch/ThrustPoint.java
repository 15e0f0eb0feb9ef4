package trestle.launch;

import trestle.numeric.Guard;

/**
 * One point of a thrust curve.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param thrustN thrust, N
 */
public record ThrustPoint(double airspeedMPerS, double thrustN) {
    /** Checks the physics. */
    public ThrustPoint {
        Guard.notNegative("airspeedMPerS", airspeedMPerS);
        Guard.notNegative("thrustN", thrustN);
    }
}
