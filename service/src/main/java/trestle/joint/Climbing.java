package trestle.joint;

import trestle.numeric.Guard;

/**
 * An aircraft at its safe climb speed.
 *
 * @param airspeedMPerS that airspeed, m/s, above 0
 * @param dragN drag of level flight there, N
 * @param weightN weight, N, above 0
 */
public record Climbing(double airspeedMPerS, double dragN, double weightN) {
    /** Checks the physics. */
    public Climbing {
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.positive("weightN", weightN);
    }

    /**
     * Rate of climb, {@code V (T - D) / W}, straight up at most.
     *
     * @param thrustN thrust, N
     * @return rate, m/s; below 0 where it sinks
     */
    public double rateMPerS(double thrustN) {
        return airspeedMPerS * Math.max(-1, Math.min(1, (thrustN - dragN) / weightN));
    }
}
