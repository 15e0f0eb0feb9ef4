package trestle.launch;

/**
 * A steady climb at full power.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param rateMPerS rate of climb, m/s; below 0 where the thrust is below the drag
 * @param angleRad angle of climb, rad
 */
public record Climb(double airspeedMPerS, double rateMPerS, double angleRad) {

    /**
     * {@code sin γ = (T − D) / W}, rate {@code V sin γ}, with the drag of level flight; [1] section
     * 6.8. A thrust above weight and drag climbs straight up.
     *
     * @param thrustN thrust, N
     * @param dragN drag, N
     * @param weightN weight, N
     * @param airspeedMPerS airspeed, m/s
     * @return the climb
     */
    public static Climb of(double thrustN, double dragN, double weightN, double airspeedMPerS) {
        double sine = Math.max(-1, Math.min(1, (thrustN - dragN) / weightN));
        return new Climb(airspeedMPerS, airspeedMPerS * sine, Math.asin(sine));
    }
}
