package trestle.launch;

import java.util.OptionalDouble;

/**
 * The aircraft at the moment it is let go. Air that comes from behind carries nothing: in a
 * tailwind faster than the launch the airspeed along the ground counts as none.
 *
 * @param left false where it never left the dolly or the ramp
 * @param forwardAirspeedMPerS airspeed along the ground, m/s
 * @param upwardSpeedMPerS upward speed, m/s
 * @param runM way along ground, ramp or rail, m; empty for a throw
 * @param runTimeS time of that, s
 * @param groundSpeedMPerS speed along ground, ramp or rail at the end of it, m/s
 */
record Release(
        boolean left,
        double forwardAirspeedMPerS,
        double upwardSpeedMPerS,
        OptionalDouble runM,
        double runTimeS,
        double groundSpeedMPerS) {

    static Release along(
            boolean left,
            double groundSpeedMPerS,
            double angleRad,
            double headwindMPerS,
            OptionalDouble runM,
            double runTimeS) {
        return new Release(
                left,
                Math.max(0, groundSpeedMPerS * Math.cos(angleRad) + headwindMPerS),
                groundSpeedMPerS * Math.sin(angleRad),
                runM,
                runTimeS,
                groundSpeedMPerS);
    }

    double airspeedMPerS() {
        return Math.hypot(forwardAirspeedMPerS, upwardSpeedMPerS);
    }

    OptionalDouble meanAccelerationMPerS2() {
        return runM.isPresent() && runTimeS > 0
                ? OptionalDouble.of(groundSpeedMPerS / runTimeS)
                : OptionalDouble.empty();
    }
}
