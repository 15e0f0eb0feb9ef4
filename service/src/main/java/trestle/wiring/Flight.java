package trestle.wiring;

import trestle.numeric.Guard;

/**
 * What carrying mass costs in flight.
 *
 * @param durationS duration of the flight, s, above 0
 * @param specificPowerWPerKg total electrical power over take-off mass, W/kg, above 0
 */
public record Flight(double durationS, double specificPowerWPerKg) {
    /** {@code d ln P / d ln m} for {@code P ∝ m^1.5}; see {@link #powerPerMassWPerKg()}. */
    public static final double MASS_EXPONENT = 1.5;

    /** Checks the physics. */
    public Flight {
        Guard.positive("durationS", durationS);
        Guard.positive("specificPowerWPerKg", specificPowerWPerKg);
    }

    /**
     * Power that one more kilogram takes: {@code dP/dm = 1.5 P/m}.
     *
     * <p>At a fixed lift coefficient, such as that of least power, speed goes with {@code √m} and
     * drag with m, so {@code P = D V ∝ m^1.5} at constant propulsive efficiency; the derivative
     * follows.
     *
     * @return power per mass, W/kg
     */
    public double powerPerMassWPerKg() {
        return MASS_EXPONENT * specificPowerWPerKg;
    }

    /**
     * Energy that a wire takes from the pack in the flight: {@code (P_loss + dP/dm m) t}.
     *
     * @param lossW heat in the wire, W
     * @param massKg mass of the wire, kg
     * @return energy, J
     */
    public double energyCostJ(double lossW, double massKg) {
        return (lossW + powerPerMassWPerKg() * massKg) * durationS;
    }
}
