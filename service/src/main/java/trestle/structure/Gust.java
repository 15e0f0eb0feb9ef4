package trestle.structure;

/** The gust formula of CS-VLA 341 and the size of the gust. */
public final class Gust {
    /** Derived gust up to cruise, m/s: CS-VLA 333(c). */
    public static final double REGULATION_M_PER_S = 15.24;

    /** Chord of the aeroplane that these gusts were meant for, m; our choice. */
    static final double REGULATION_CHORD_M = 1.5;

    private Gust() {}

    /**
     * Mass ratio {@code μ = 2 (m/S) / (ρ c a)}.
     *
     * @param loadingKgPerM2 m/S, kg/m²
     * @param densityKgPerM3 ρ, kg/m³
     * @param chordM mean geometric chord c, m
     * @param liftSlopePerRad a, per rad
     * @return μ
     */
    public static double massRatio(
            double loadingKgPerM2, double densityKgPerM3, double chordM, double liftSlopePerRad) {
        return 2 * loadingKgPerM2 / (densityKgPerM3 * chordM * liftSlopePerRad);
    }

    /**
     * Alleviation factor {@code Kg = 0.88 μ / (5.3 + μ)}; fitted for heavier aircraft than these.
     *
     * @param massRatio μ, above 0
     * @return Kg
     */
    public static double alleviation(double massRatio) {
        return 0.88 * massRatio / (5.3 + massRatio);
    }

    /**
     * What a gust adds to the load factor: {@code Kg ½ ρ0 U V a / (m g / S)}.
     *
     * @param alleviation Kg
     * @param gustMPerS U, m/s
     * @param airspeedMPerS equivalent airspeed V, m/s
     * @param liftSlopePerRad a, per rad
     * @param loadingNPerM2 m g / S, N/m²
     * @return multiples of g
     */
    public static double increment(
            double alleviation, double gustMPerS, double airspeedMPerS, double liftSlopePerRad, double loadingNPerM2) {
        return alleviation
                * 0.5
                * Flight.SEA_LEVEL_KG_PER_M3
                * gustMPerS
                * airspeedMPerS
                * liftSlopePerRad
                / loadingNPerM2;
    }

    /**
     * The gust scaled to the chord: {@code U = 15.24 (c / 1.5 m)^(1/6)}, after the gradient law of 14 CFR 25.341(a)(4), its
     * exponent from memory, extrapolated below 9 m of gradient.
     *
     * @param chordM mean geometric chord, m
     * @return m/s
     */
    public static double scaledMPerS(double chordM) {
        return REGULATION_M_PER_S * Math.pow(chordM / REGULATION_CHORD_M, 1.0 / 6);
    }

    /**
     * Three standard deviations of the gusts near the ground: a tenth of the wind at 6 m each (MIL-F-8785C, second-hand).
     *
     * @param windMPerS wind at 6 m, m/s
     * @return m/s
     */
    public static double operatingMPerS(double windMPerS) {
        return 0.3 * windMPerS;
    }
}
