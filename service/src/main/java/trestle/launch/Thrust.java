package trestle.launch;

/** Thrust at full power as a function of airspeed. */
@FunctionalInterface
public interface Thrust {
    /**
     * Thrust.
     *
     * @param airspeedMPerS airspeed, m/s, not below 0
     * @return thrust, N, not below 0
     */
    double thrustN(double airspeedMPerS);
}
