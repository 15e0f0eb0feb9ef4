package trestle.launch;

import trestle.numeric.Guard;

/**
 * Thrust that falls in a straight line from the static one to nothing at the pitch speed.
 *
 * @param staticThrustN thrust standing still, N
 * @param pitchSpeedMPerS airspeed at which nothing is left, m/s: pitch times revolutions
 */
public record LinearThrust(double staticThrustN, double pitchSpeedMPerS) implements Thrust {
    /** Checks the physics. */
    public LinearThrust {
        Guard.notNegative("staticThrustN", staticThrustN);
        Guard.positive("pitchSpeedMPerS", pitchSpeedMPerS);
    }

    @Override
    public double thrustN(double airspeedMPerS) {
        return staticThrustN * Math.max(0, 1 - airspeedMPerS / pitchSpeedMPerS);
    }
}
