package trestle.atmosphere;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.numeric.Root;

/** The U.S. Standard Atmosphere 1976 up to 20 km geopotential altitude. */
public final class StandardAtmosphere {
    /** Least geopotential altitude covered, m. */
    public static final double LOWEST_ALTITUDE_M = -1000;

    /** Greatest geopotential altitude covered, m. */
    public static final double HIGHEST_ALTITUDE_M = 20_000;

    /** Standard gravity, m/s², [1] table 2. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double SEA_LEVEL_PRESSURE_PA = 101_325;
    private static final double LAPSE_RATE_K_PER_M = 0.0065;
    private static final double TROPOPAUSE_M = 11_000;
    private static final double TROPOPAUSE_TEMPERATURE_K = SEA_LEVEL_TEMPERATURE_K - LAPSE_RATE_K_PER_M * TROPOPAUSE_M;

    /** {@code g0 / (R L)}, the exponent of [1] equation 33a. */
    private static final double PRESSURE_EXPONENT =
            GRAVITY_M_PER_S2 / (AirState.GAS_CONSTANT_J_PER_KG_K * LAPSE_RATE_K_PER_M);

    private StandardAtmosphere() {}

    /**
     * The standard air at an altitude.
     *
     * @param altitudeM geopotential altitude, m, −1000 to 20 000
     * @return its state
     * @throws ImpossibleValue outside that range
     */
    public static AirState at(double altitudeM) {
        return new AirState(temperatureK(altitudeM), pressurePa(altitudeM));
    }

    /**
     * Temperature: falls by 6.5 K/km to 11 km, then constant, [1] equation 23.
     *
     * @param altitudeM geopotential altitude, m, −1000 to 20 000
     * @return temperature, K
     * @throws ImpossibleValue outside that range
     */
    public static double temperatureK(double altitudeM) {
        Guard.within("altitudeM", altitudeM, LOWEST_ALTITUDE_M, HIGHEST_ALTITUDE_M);
        return SEA_LEVEL_TEMPERATURE_K - LAPSE_RATE_K_PER_M * Math.min(altitudeM, TROPOPAUSE_M);
    }

    /**
     * Static pressure: {@code p0 (1 − L h / T0)^(g0 / (R L))} to 11 km, [1] equation 33a; above, it
     * decays by {@code exp(−g0 (h − h1) / (R T1))}, equation 33b.
     *
     * @param altitudeM geopotential altitude, m, −1000 to 20 000
     * @return pressure, Pa
     * @throws ImpossibleValue outside that range
     */
    public static double pressurePa(double altitudeM) {
        double inTroposphere =
                SEA_LEVEL_PRESSURE_PA * Math.pow(temperatureK(altitudeM) / SEA_LEVEL_TEMPERATURE_K, PRESSURE_EXPONENT);
        double aboveM = Math.max(0, altitudeM - TROPOPAUSE_M);
        return inTroposphere
                * Math.exp(-GRAVITY_M_PER_S2 * aboveM / (AirState.GAS_CONSTANT_J_PER_KG_K * TROPOPAUSE_TEMPERATURE_K));
    }

    /**
     * Altitude at which the standard atmosphere has a density: the density altitude, from the exact
     * density rather than the 120 ft/K rule.
     *
     * @param densityKgPerM3 density, kg/m³, between the densities at 20 000 m and −1000 m; outside
     *     it the nearer end is returned
     * @return geopotential altitude, m
     */
    public static double densityAltitudeM(double densityKgPerM3) {
        Guard.positive("densityKgPerM3", densityKgPerM3);
        double low = LOWEST_ALTITUDE_M;
        double high = HIGHEST_ALTITUDE_M;
        if (densityKgPerM3 >= at(low).densityKgPerM3()) {
            return low;
        }
        return Root.between(h -> Math.log(at(h).densityKgPerM3() / densityKgPerM3), low, high, 1e-6)
                .orElse(high);
    }
}
