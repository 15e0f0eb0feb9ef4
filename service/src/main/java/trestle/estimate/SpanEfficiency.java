package trestle.estimate;

/**
 * How near the drag due to lift comes to that of an elliptic wing: Oswald's factor e = 1/[1/(e_t k_F) + π A P].
 *
 * <p>Source: M. Niță, D. Scholz, "Estimating the Oswald Factor from Basic Aircraft Geometrical Parameters", DLRK 2012,
 * equations 36 and 37 (second hand): e_t of taper, sweep and aspect ratio A, and k_F of the fuselage. P, the part of the
 * profile drag that grows with lift, is the slope of five sections between lift coefficients of 0.4 and 0.9 at Reynolds
 * numbers of 2 to 3·10⁵ (University of Illinois low-speed tests).
 */
public final class SpanEfficiency {
    /** Taper where none is known. */
    static final double USUAL_TAPER = 0.6;

    /** Width of the fuselage over the span where none is known. */
    static final double USUAL_FUSELAGE = 0.06;

    private static final Spread PROFILE = Spread.between(0.003, 0.0065, 0.0105);

    private SpanEfficiency() {}

    /**
     * Oswald's factor of a wing of which only the aspect ratio is known.
     *
     * @param aspectRatio A
     * @return its spread
     */
    public static Spread ofAspectRatio(double aspectRatio) {
        double ideal = ofTaper(aspectRatio, USUAL_TAPER, 0) * ofFuselage(USUAL_FUSELAGE);
        return z -> oswald(ideal, aspectRatio, PROFILE.at(-z));
    }

    /**
     * e = 1/[1/(e_t k_F) + π A P].
     *
     * @param ideal e_t k_F
     * @param aspectRatio A
     * @param profile P
     * @return e
     */
    static double oswald(double ideal, double aspectRatio, double profile) {
        return 1 / (1 / ideal + Math.PI * aspectRatio * profile);
    }

    /**
     * e_t = 1/(1 + f(λ − Δλ) A), f(x) = 0.0524x⁴ − 0.15x³ + 0.1659x² − 0.0706x + 0.0119, Δλ = −0.357 + 0.45 e^(−0.0375φ).
     *
     * @param aspectRatio A
     * @param taper λ, tip over root chord
     * @param sweepDeg φ, sweep of the quarter chord, °, not negative
     * @return e_t
     */
    static double ofTaper(double aspectRatio, double taper, double sweepDeg) {
        double x = taper - (-0.357 + 0.45 * Math.exp(-0.0375 * sweepDeg));
        double f = 0.0524 * Math.pow(x, 4) - 0.15 * Math.pow(x, 3) + 0.1659 * x * x - 0.0706 * x + 0.0119;
        return 1 / (1 + f * aspectRatio);
    }

    /**
     * k_F = 1 − 2 (d/b)².
     *
     * @param widthOverSpan d/b
     * @return k_F
     */
    static double ofFuselage(double widthOverSpan) {
        return 1 - 2 * widthOverSpan * widthOverSpan;
    }
}
