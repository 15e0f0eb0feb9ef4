package trestle.structure;

/** Speeds and load factors of a manoeuvre. */
public final class Flight {
    /** Density that equivalent airspeed refers to, kg/m³. */
    public static final double SEA_LEVEL_KG_PER_M3 = 1.225;

    /** Standard gravity, m/s². */
    static final double GRAVITY_M_PER_S2 = 9.80665;

    private Flight() {}

    /**
     * Stall speed: {@code sqrt(2 m g / (ρ0 S C_Lmax))}, equivalent.
     *
     * @param massKg m, kg
     * @param areaM2 S, m²
     * @param maxLift C_Lmax
     * @return m/s
     */
    public static double stallMPerS(double massKg, double areaM2, double maxLift) {
        return Math.sqrt(2 * massKg * GRAVITY_M_PER_S2 / (SEA_LEVEL_KG_PER_M3 * areaM2 * maxLift));
    }

    /**
     * Manoeuvring speed {@code V_S sqrt(n)}.
     *
     * @param stallMPerS V_S, m/s
     * @param loadFactor n, above 0
     * @return m/s
     */
    public static double manoeuvreMPerS(double stallMPerS, double loadFactor) {
        return stallMPerS * Math.sqrt(loadFactor);
    }

    /**
     * Limit of 14 CFR 23.337, from memory: {@code 2.1 + 24000 / (W + 10000)}, at most 3.8.
     *
     * @param weightLb W, lb
     * @return multiples of g
     */
    public static double conventionalLimit(double weightLb) {
        return Math.min(3.8, 2.1 + 24000 / (weightLb + 10000));
    }

    /**
     * Load factor of an even pull: {@code v² / (2 s g)}.
     *
     * @param speedMPerS v, m/s
     * @param wayM s, m, above 0
     * @return multiples of g
     */
    public static double pull(double speedMPerS, double wayM) {
        return speedMPerS * speedMPerS / (2 * wayM * GRAVITY_M_PER_S2);
    }

    /**
     * Sink speed of 14 CFR 23.473(d), {@code 4.4 (W/S)^(1/4)} ft/s and lb/ft², from memory.
     *
     * @param loadingNPerM2 weight over wing area, N/m²
     * @return m/s
     */
    public static double sinkMPerS(double loadingNPerM2) {
        return 4.4 * 0.3048 * Math.pow(loadingNPerM2 / 47.880259, 0.25);
    }
}
