package trestle.estimate;

/**
 * What kind of section a wing has, which decides its maximum lift.
 *
 * <p>Maximum lift coefficients of the whole aircraft at a Reynolds number of 2·10⁵: of the section from wind-tunnel tests
 * (University of Illinois: M. Selig et al., Summary of Low-Speed Airfoil Data 1, 1995; M. Selig and B. McGranahan,
 * NREL/SR-500-34515, 2004), times 0.90 for the wing (D. Raymer, Aircraft Design, equation 12.15; from memory), less the
 * download on the tail (judgement). Flaps are not in them.
 */
public enum WingSection {
    /** Symmetric. */
    SYMMETRIC(0.66, 0.74, 0.82),
    /** Reflexed, as a flying wing has it. */
    REFLEXED(0.80, 0.90, 1.00),
    /** Thin, little camber, as for fast sailplanes. */
    THIN(0.82, 0.92, 1.02),
    /** General, some 3 % of camber, or flat-bottomed. */
    GENERAL(0.93, 1.03, 1.14),
    /** Thick, 4 to 6 % of camber. */
    THICK(1.05, 1.18, 1.32),
    /** High lift, 6 to 9 % of camber; below a Reynolds number of 1.5·10⁵ all of it may be lost. */
    HIGH_LIFT(1.35, 1.60, 1.85),
    /** Not said. */
    UNKNOWN(0.85, 1.05, 1.25);

    private final double low;
    private final double median;
    private final double high;

    WingSection(double low, double median, double high) {
        this.low = low;
        this.median = median;
        this.high = high;
    }

    /** Maximum lift coefficient of the whole aircraft. */
    public Spread maxLiftCoefficient() {
        return Spread.between(low, median, high);
    }
}
