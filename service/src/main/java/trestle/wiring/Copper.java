package trestle.wiring;

/** Annealed copper, [2]. */
public final class Copper {
    /** Resistivity at 20 °C, Ω m: 1 / (58 MS/m), [2]. */
    public static final double RESISTIVITY_20_C_OHM_M = 1 / 58e6;

    /** Temperature coefficient of resistance at 20 °C, 1/K, [2]. */
    public static final double TEMPERATURE_COEFFICIENT_PER_K = 0.00393;

    /** Density, kg/m³, [2]. */
    public static final double DENSITY_KG_PER_M3 = 8890;

    /** Specific heat, J/(kg K), near room temperature, [4]. */
    public static final double SPECIFIC_HEAT_J_PER_KG_K = 385;

    /** Melting point, K: 1084.62 °C, a fixed point of ITS-90. */
    public static final double MELTING_POINT_K = 1357.77;

    private static final double REFERENCE_TEMPERATURE_K = 293.15;

    private Copper() {}

    /**
     * Resistance at a temperature over resistance at 20 °C: {@code 1 + α (T − 20 °C)}, [2].
     *
     * @param temperatureK temperature, K, above 40 (the line crosses zero at 39 K)
     * @return ratio
     */
    public static double resistanceRatio(double temperatureK) {
        return 1 + TEMPERATURE_COEFFICIENT_PER_K * (temperatureK - REFERENCE_TEMPERATURE_K);
    }

    /**
     * Resistance per metre of a solid conductor at 20 °C: {@code ρ / A}.
     *
     * @param areaM2 copper area, m², above 0
     * @return resistance, Ω/m
     */
    public static double resistancePerMOhm(double areaM2) {
        return RESISTIVITY_20_C_OHM_M / areaM2;
    }
}
