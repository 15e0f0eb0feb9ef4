package trestle.massbalance;

/** Lift slope of a finite wing and the downwash behind it. */
final class LiftSlope {
    /** Lift slope of a real section over 2π; common practice for model sections, no source. */
    static final double SECTION_SLOPE_RATIO = 0.95;

    /** How the downwash falls off with height; fitted to our own vortex lattice. */
    static final double HEIGHT_EXPONENT = 1.5;

    /** The greatest height over span that the lattice was run for. */
    static final double HIGHEST_FITTED_RATIO = 0.16;

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
     * Downwash gradient far behind an elliptically loaded wing, {@code dε/dα = 2 a / (π A)} in its plane, [3], and less
     * above or below it: times {@code (1 − |h| / b)^1.5}, fitted to our own vortex lattice, which it follows to 0.01 up to
     * h/b = 0.16.
     *
     * @param liftSlopePerRad a, the wing's lift slope, per rad
     * @param aspectRatio A, the wing's, above 0
     * @param heightRatio h/b, height of the tail over the wing's plane over the wing's span; beyond ±1 there is no
     *     downwash left
     * @return change of downwash with angle of attack, 0 to 1
     */
    static double downwashGradient(double liftSlopePerRad, double aspectRatio, double heightRatio) {
        double nearness = Math.max(0, 1 - Math.abs(heightRatio));
        return 2 * liftSlopePerRad / (Math.PI * aspectRatio) * Math.pow(nearness, HEIGHT_EXPONENT);
    }
}
