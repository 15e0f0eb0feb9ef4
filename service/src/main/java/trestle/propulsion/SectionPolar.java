package trestle.propulsion;

/**
 * Lift and drag of a blade section: a straight line below the stall, a flat plate above it, joined
 * by a smooth share of separation.
 *
 * <p>Angles are counted from the angle of no lift. The sine and cosine come with them, since the
 * solver knows them already.
 */
final class SectionPolar {
    private static final double LIFT_SLOPE_PER_RAD = 5.38;
    private static final double STALL_ANGLE_RAD = Math.toRadians(18.6);
    private static final double STALL_SHARPNESS = 30;
    private static final double PLATE_LIFT = 1.30;
    private static final double PLATE_DRAG = 1.8;
    private static final double SEPARATED_DRAG = 0.071;
    private static final double LEAST_DRAG_LIFT = 0.48;
    private static final double LEAST_PROFILE_DRAG = 0.007;
    private static final double REFERENCE_REYNOLDS = 1e5;
    private static final double LEAST_REYNOLDS = 1e4;
    private static final double GREATEST_REYNOLDS = 1e7;

    /** Keeps exp() finite; at 60 the share of separation is 0 or 1 to the last bit. */
    private static final double GREATEST_EXPONENT = 60;

    /** {@code e^(M as)}. */
    private static final double AT_STALL = Math.exp(STALL_SHARPNESS * STALL_ANGLE_RAD);

    private SectionPolar() {}

    /**
     * Share of separated flow: {@code (1 + s1 + s2) / ((1 + s1)(1 + s2))}, {@code s1 = e^(−M (a −
     * as))}, {@code s2 = e^(M (a + as))}; a logistic blend, textbook.
     *
     * @param liftAngleRad angle from no lift, rad
     * @return 0 (attached) to 1
     */
    static double separation(double liftAngleRad) {
        double exponent = STALL_SHARPNESS * liftAngleRad;
        double grown = Math.exp(Math.max(-GREATEST_EXPONENT, Math.min(GREATEST_EXPONENT, exponent)));
        double s1 = AT_STALL / grown;
        double s2 = AT_STALL * grown;
        return (1 + s1 + s2) / ((1 + s1) * (1 + s2));
    }

    /**
     * Lift coefficient: {@code (1 − g) 5.38 a + g 1.30 sin 2a}.
     *
     * @param liftAngleRad angle from no lift, a, rad
     * @param sine its sine
     * @param cosine its cosine
     * @param separation share of separated flow, g
     * @return lift coefficient
     */
    static double lift(double liftAngleRad, double sine, double cosine, double separation) {
        return (1 - separation) * LIFT_SLOPE_PER_RAD * liftAngleRad + separation * PLATE_LIFT * 2 * sine * cosine;
    }

    /**
     * Drag coefficient: {@code cd0 + (1 − g) k (5.38 a − 0.48)² + g (0.071 + 1.8 sin² a)}.
     *
     * @param liftAngleRad angle from no lift, a, rad
     * @param sine its sine
     * @param separation share of separated flow, g
     * @param profileDrag cd0
     * @param liftDragFactor k
     * @return drag coefficient
     */
    static double drag(double liftAngleRad, double sine, double separation, double profileDrag, double liftDragFactor) {
        double fromBest = LIFT_SLOPE_PER_RAD * liftAngleRad - LEAST_DRAG_LIFT;
        return profileDrag
                + (1 - separation) * liftDragFactor * fromBest * fromBest
                + separation * (SEPARATED_DRAG + PLATE_DRAG * sine * sine);
    }

    /**
     * Profile drag coefficient: {@code max(cd0 (Re / 100 000)^n, 0.007)}.
     *
     * @param type kind of blade, for cd0 and n
     * @param reynolds Reynolds number of the section; taken as 10⁴ below that and 10⁷ above
     * @return drag coefficient
     */
    static double profileDrag(BladeType type, double reynolds) {
        double held = Math.max(LEAST_REYNOLDS, Math.min(GREATEST_REYNOLDS, reynolds));
        return Math.max(
                LEAST_PROFILE_DRAG,
                type.profileDragCoefficient() * Math.pow(held / REFERENCE_REYNOLDS, type.reynoldsExponent()));
    }
}
