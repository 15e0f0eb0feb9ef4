package trestle.estimate;

/**
 * How far a propeller that is known by diameter and pitch lies from its general form: the errors of that form on 60
 * propellers measured in wind tunnels, as standard deviations of logarithms.
 */
public final class PropellerRules {
    private static final double SMALL_IN = 9;
    private static final double LARGE_IN = 21;
    private static final double LEAST_PITCH = 0.3;
    private static final double GREATEST_PITCH = 1.1;

    private PropellerRules() {}

    /**
     * Shaft power at a thrust in flight, over that of the form.
     *
     * @param diameterIn diameter, in
     * @param pitchIn pitch, in
     * @return its spread about 1
     */
    public static Spread powerAtThrust(double diameterIn, double pitchIn) {
        return Spread.logNormal(1, 0.065 * (covered(diameterIn, pitchIn) ? 1 : 2));
    }

    /**
     * Shaft power at a thrust in flight, over that of the general form, of a blade that may be a general or an efficient
     * one: the two differ by some 12 %.
     *
     * @param diameterIn diameter, in
     * @param pitchIn pitch, in
     * @return its spread about the middle of the two
     */
    public static Spread powerOfUnknownBlade(double diameterIn, double pitchIn) {
        double deviation = 0.065 * (covered(diameterIn, pitchIn) ? 1 : 2);
        return Spread.logNormal(0.94, Math.hypot(deviation, 0.06));
    }

    /**
     * Speed of rotation at a thrust in flight, over that of the form.
     *
     * @param diameterIn diameter, in
     * @param pitchIn pitch, in
     * @return its spread about 1
     */
    public static Spread rotationAtThrust(double diameterIn, double pitchIn) {
        return Spread.logNormal(1, 0.10 * (covered(diameterIn, pitchIn) ? 1 : 2));
    }

    /** Whether the measured propellers were of this size. */
    public static boolean covered(double diameterIn, double pitchIn) {
        double pitch = pitchIn / diameterIn;
        return diameterIn >= SMALL_IN && diameterIn <= LARGE_IN && pitch >= LEAST_PITCH && pitch <= GREATEST_PITCH;
    }

    /**
     * Mass of a thin electric plastic propeller, 8 to 27 in: m = 0.0841 D^2.359, g. Fitted to 95 of one maker.
     *
     * @param diameterIn D, in
     * @return its spread, g
     */
    public static Spread massG(double diameterIn) {
        return Spread.logNormal(0.0841 * Math.pow(diameterIn, 2.359), 0.18);
    }
}
