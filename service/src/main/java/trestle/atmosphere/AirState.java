package trestle.atmosphere;

import trestle.numeric.Guard;

/**
 * A state of dry air.
 *
 * @param temperatureK static temperature, K, above 0
 * @param pressurePa static pressure, Pa, above 0
 */
public record AirState(double temperatureK, double pressurePa) {
    /** Specific gas constant of dry air, J/(kg K): R* / M0 of [1], 8314.32 / 28.9644. */
    static final double GAS_CONSTANT_J_PER_KG_K = 8314.32 / 28.9644;

    private static final double HEAT_CAPACITY_RATIO = 1.4;
    private static final double SUTHERLAND_BETA = 1.458e-6;
    private static final double SUTHERLAND_TEMPERATURE_K = 110.4;

    /** Checks the physics. */
    public AirState {
        Guard.positive("temperatureK", temperatureK);
        Guard.positive("pressurePa", pressurePa);
    }

    /**
     * Density: {@code p / (R T)}, [1] equation 42.
     *
     * @return density, kg/m³
     */
    public double densityKgPerM3() {
        return pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }

    /**
     * Speed of sound: {@code sqrt(γ R T)}, [1] equation 50.
     *
     * @return speed of sound, m/s
     */
    public double speedOfSoundMPerS() {
        return Math.sqrt(HEAT_CAPACITY_RATIO * GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }

    /**
     * Dynamic viscosity by Sutherland's law: {@code β T^1.5 / (T + S)}, [1] equation 51.
     *
     * @return dynamic viscosity, Pa s
     */
    public double viscosityPaS() {
        return SUTHERLAND_BETA * Math.pow(temperatureK, 1.5) / (temperatureK + SUTHERLAND_TEMPERATURE_K);
    }
}
