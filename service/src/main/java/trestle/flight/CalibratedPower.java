package trestle.flight;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.numeric.Guard;

/**
 * Power from a fit to a flight log: {@code P = P0 + k3 ρ V³ + k1 m² / (ρ V)}. The constants hold
 * for another mass and density: {@code k3 = S C_D0 / (2 η)}, {@code k1 = 2 g² K / (S η)}.
 *
 * @param systemsPowerW {@code P0}, W
 * @param parasiteAreaM2 {@code k3}, m²: half the drag area over the efficiency
 * @param inducedFactorPerS4 {@code k1}, 1/s⁴
 * @param massKg mass of the aircraft on the flights that were fitted, kg
 * @param airspeeds airspeeds that the fit rests on
 * @param climbEfficiencyFraction from pack power to thrust power, for the climb alone; the fit
 *     cannot tell it from the drag
 */
public record CalibratedPower(
        double systemsPowerW,
        double parasiteAreaM2,
        double inducedFactorPerS4,
        double massKg,
        AirspeedRange airspeeds,
        double climbEfficiencyFraction)
        implements PowerSource {
    /** Checks the physics. */
    public CalibratedPower {
        Guard.notNegative("systemsPowerW", systemsPowerW);
        Guard.positive("parasiteAreaM2", parasiteAreaM2);
        Guard.positive("inducedFactorPerS4", inducedFactorPerS4);
        Guard.positive("massKg", massKg);
        Guard.present("airspeeds", airspeeds);
        Guard.positive("climbEfficiencyFraction", climbEfficiencyFraction);
        Guard.within("climbEfficiencyFraction", climbEfficiencyFraction, 0, 1);
    }

    @Override
    public double powerW(Airframe airframe, double densityKgPerM3, double airspeedMPerS, double climbRateMPerS) {
        double m = airframe.massKg();
        double v = airspeedMPerS;
        return systemsPowerW
                + parasiteAreaM2 * densityKgPerM3 * v * v * v
                + inducedFactorPerS4 * m * m / (densityKgPerM3 * v)
                + m * GRAVITY_M_PER_S2 * climbRateMPerS / climbEfficiencyFraction;
    }

    @Override
    public AirspeedRange validAirspeeds(Airframe airframe, double densityKgPerM3) {
        return airspeeds;
    }
}
