package trestle.massbalance;

/** Lift slope of a finite wing and the downwash behind it. */
final class LiftSlope {
    /** Lift slope of a real section over 2π; common practice for model sections, no source. */
    static final double SECTION_SLOPE_RATIO = 0.95;

    private LiftSlope() {}

    /**
     * Lift slope, incompressible: {@code a = 2π A / (2 + sqrt(4 + A² (1 + tan²Λ) / κ²))}, [4].
     *
     * @param aspectRatio A, above 0
     * @param halfChordSweepTangent tan Λ of the half-chord line
     * @param sectionSlopeRatio κ, the section's slope over 2π, above 0
     * @return lift slope, per rad
     */
    static double perRad(double aspectRatio, double halfChordSweepTangent, double sectionSlopeRatio) {
        double effective = aspectRatio / sectionSlopeRatio;
        double swept = effective * effective * (1 + halfChordSweepTangent * halfChordSweepTangent);
        return 2 * Math.PI * aspectRatio / (2 + Math.sqrt(4 + swept));
    }

    /**
     * Downwash gradient far behind an elliptically loaded wing: {@code dε/dα = 2 a / (π A)}, [3].
     *
     * @param liftSlopePerRad a, the wing's lift slope, per rad
     * @param aspectRatio A, the wing's, above 0
     * @return change of downwash with angle of attack, 0 to 1
     */
    static double downwashGradient(double liftSlopePerRad, double aspectRatio) {
        return 2 * liftSlopePerRad / (Math.PI * aspectRatio);
    }
}
