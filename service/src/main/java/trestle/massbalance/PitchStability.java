package trestle.massbalance;

/** What holds the nose where it is, stick fixed, symbols as in [3]. */
final class PitchStability {
    private PitchStability() {}

    /**
     * Lift slope of the tail in the wing's downwash over that of the wing, both on the wing's area: {@code K = η (St / S)
     * (at / aw) (1 − dε/dα)}.
     *
     * @param efficiencyRatio η, dynamic pressure at the tail over that of the free stream
     * @param areaRatio tail area that acts in pitch over wing area
     * @param slopeRatio lift slope of the tail over that of the wing
     * @param downwashGradient change of downwash at the tail with angle of attack
     * @return K, 0 or more
     */
    static double tailLiftRatio(double efficiencyRatio, double areaRatio, double slopeRatio, double downwashGradient) {
        return efficiencyRatio * areaRatio * slopeRatio * (1 - downwashGradient);
    }

    /**
     * How far aft of the wing's aerodynamic centre the neutral point lies: {@code (K l − c Cmf / aw) / (1 + K)}. The lever
     * is counted from the wing, not from the CG, so the tail's own lift stands in the whole lift: without the divisor the
     * point comes out too far aft.
     *
     * @param tailLiftRatio K
     * @param leverM l, from the wing's aerodynamic centre to the tail's, m
     * @param fuselageM c Cmf / aw, how far the fuselage takes the wing's own neutral point forward, m
     * @return m
     */
    static double shiftM(double tailLiftRatio, double leverM, double fuselageM) {
        return (tailLiftRatio * leverM - fuselageM) / (1 + tailLiftRatio);
    }

    /**
     * How the shift changes with K: {@code (l + c Cmf / aw) / (1 + K)²}.
     *
     * @param tailLiftRatio K
     * @param leverM l, m
     * @param fuselageM c Cmf / aw, m
     * @return m
     */
    static double shiftPerTailLiftRatioM(double tailLiftRatio, double leverM, double fuselageM) {
        return (leverM + fuselageM) / ((1 + tailLiftRatio) * (1 + tailLiftRatio));
    }

    /**
     * Area of a V-tail that acts in pitch: {@code S cos²Γ}, [6]. Its projection, {@code S cos Γ}, overstates it.
     *
     * @param areaM2 area of both panels as they are, m²
     * @param dihedralRad Γ, of each panel, rad
     * @return area, m²
     */
    static double areaInPitchM2(double areaM2, double dihedralRad) {
        return areaM2 * Math.cos(dihedralRad) * Math.cos(dihedralRad);
    }
}
