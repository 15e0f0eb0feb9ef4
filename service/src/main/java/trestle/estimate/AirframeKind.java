package trestle.estimate;

/**
 * How an airframe is built and what sticks out of it, which decides its drag at no lift.
 *
 * <p>Skin-friction coefficients and wetted areas are judgement. What they lean on: the equivalent skin-friction
 * coefficients of manned classes (D. Raymer, Aircraft Design, table 12.3; second hand), two textbook aircraft of R. Beard
 * and T. McLain, Small Unmanned Aircraft, 2012 (second hand), one wind-tunnel test of a foam flying wing (K. Gryte et
 * al., ICUAS 2018; second hand), and F. Götten et al., CEAS Aeronautical Journal 12, 2021, by whom turrets and fixed gear
 * are almost half of the parasite drag (abstract).
 */
public enum AirframeKind {
    /** Moulded, like a sailplane: no gear, faired motor. */
    MOULDED(0.0055, 0.0065, 0.0078, 2.9, 0.06),
    /** Built up and covered with film: clean, little exposed. */
    BUILT_UP(0.0066, 0.0080, 0.0098, 3.5, 0.09),
    /** Flying wing of foam: clean. */
    FLYING_WING(0.0068, 0.0085, 0.0108, 2.35, 0.05),
    /** Foam with horns, gaps, antennas, skids. */
    FOAM_EXPOSED(0.0082, 0.0105, 0.0135, 3.5, 0.09),
    /** Twin boom or nacelles, with payload in the stream and fixed gear. */
    PAYLOAD_PUSHER(0.0095, 0.0125, 0.0165, 3.8, 0.10),
    /** Not said: any of the above. */
    UNKNOWN(0.0068, 0.0098, 0.0142, 3.4, 0.14);

    private static final double REFERENCE_REYNOLDS = 3e5;
    private static final double REYNOLDS_EXPONENT = -0.25;

    private final double low;
    private final double median;
    private final double high;
    private final double wettedOverWing;
    private final double wettedDeviation;

    AirframeKind(double low, double median, double high, double wettedOverWing, double wettedDeviation) {
        this.low = low;
        this.median = median;
        this.high = high;
        this.wettedOverWing = wettedOverWing;
        this.wettedDeviation = wettedDeviation;
    }

    /** Skin-friction coefficient on the wetted area, at a Reynolds number of 3·10⁵ on the mean chord. */
    public Spread frictionCoefficient() {
        return Spread.between(low, median, high);
    }

    /** Wetted area over wing area. */
    public Spread wettedOverWingArea() {
        return Spread.logNormal(wettedOverWing, wettedDeviation);
    }

    /**
     * Drag coefficient at no lift on the wing area, C_D0 = C_fe (Re/3·10⁵)^−0.25 S_wet/S.
     *
     * @param reynolds on the mean chord at the airspeed asked for
     * @return its spread, of friction and wetted area together
     */
    public Spread zeroLiftDrag(double reynolds) {
        double middle = zeroLiftDrag(median, reynolds, wettedOverWing);
        return Spread.between(
                middle * Math.exp(-Spread.Z90 * together(Math.log(median / low) / Spread.Z90)),
                middle,
                middle * Math.exp(Spread.Z90 * together(Math.log(high / median) / Spread.Z90)));
    }

    /** Independent deviations of logarithms add by squares. */
    private double together(double frictionDeviation) {
        return Math.hypot(frictionDeviation, wettedDeviation);
    }

    /**
     * C_D0 = C_fe (Re/3·10⁵)^−0.25 S_wet/S.
     *
     * @param frictionCoefficient C_fe at a Reynolds number of 3·10⁵
     * @param reynolds Re on the mean chord
     * @param wettedOverWing S_wet/S
     * @return C_D0
     */
    public static double zeroLiftDrag(double frictionCoefficient, double reynolds, double wettedOverWing) {
        return frictionCoefficient * Math.pow(reynolds / REFERENCE_REYNOLDS, REYNOLDS_EXPONENT) * wettedOverWing;
    }
}
