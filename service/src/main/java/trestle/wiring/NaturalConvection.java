package trestle.wiring;

import trestle.atmosphere.AirState;
import trestle.atmosphere.StandardAtmosphere;

/** Heat from a horizontal cylinder to still air, [4]. */
public final class NaturalConvection {
    /** Specific heat of dry air, J/(kg K): 7/2 R of [5]. */
    static final double AIR_SPECIFIC_HEAT_J_PER_KG_K = 1004.7;

    private NaturalConvection() {}

    /**
     * Heat per metre, Churchill and Chu 1975, for Ra up to 10¹²:
     *
     * <p>{@code Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))²}, {@code Ra = g β ΔT
     * D³ Pr / ν²}, {@code q' = π k Nu ΔT}; air at the film temperature (Ts + Ta)/2, β = 1/T.
     *
     * @param surfaceK surface temperature, K, not below {@code airK}
     * @param airK air temperature, K
     * @param diameterM diameter, m
     * @param pressurePa air pressure, Pa
     * @return heat, W/m
     */
    public static double heatWPerM(double surfaceK, double airK, double diameterM, double pressurePa) {
        double riseK = surfaceK - airK;
        double filmK = (surfaceK + airK) / 2;
        AirState film = new AirState(filmK, pressurePa);
        double viscosityPaS = film.viscosityPaS();
        double conductivity = airConductivityWPerMK(filmK);
        double prandtl = viscosityPaS * AIR_SPECIFIC_HEAT_J_PER_KG_K / conductivity;
        double diffusivityM2PerS = viscosityPaS / film.densityKgPerM3();
        double rayleigh = StandardAtmosphere.GRAVITY_M_PER_S2
                * Math.max(0, riseK)
                / filmK
                * (diameterM * diameterM * diameterM)
                * prandtl
                / (diffusivityM2PerS * diffusivityM2PerS);
        double fluid = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
        double rootNusselt = 0.60 + 0.387 * Math.sqrt(Math.cbrt(rayleigh)) / fluid;
        return Math.PI * conductivity * rootNusselt * rootNusselt * riseK;
    }

    /**
     * Thermal conductivity of air: {@code 2.64638e-3 T^1.5 / (T + 245.4 × 10^(−12/T))}, [5]
     * equation 53.
     *
     * @param temperatureK temperature, K, above 0
     * @return conductivity, W/(m K)
     */
    public static double airConductivityWPerMK(double temperatureK) {
        return 2.64638e-3
                * temperatureK
                * Math.sqrt(temperatureK)
                / (temperatureK + 245.4 * Math.exp(-12 * Math.log(10) / temperatureK));
    }
}
