package trestle.flight;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import trestle.numeric.Guard;

/**
 * Power from a drag polar: {@code P = T V / η + P_systems} with {@code T = D + m g w / V}, where w
 * is the rate of climb, [1] sections 6.3 and 6.8, [2].
 *
 * @param polar drag polar on the wing area of the aircraft
 * @param efficiency from pack power to thrust power
 * @param systemsPowerW power of everything but the motor, W
 */
public record PolarPower(DragPolar polar, PropulsiveEfficiency efficiency, double systemsPowerW)
        implements PowerSource {
    /** Checks the physics. */
    public PolarPower {
        Guard.present("polar", polar);
        Guard.present("efficiency", efficiency);
        Guard.notNegative("systemsPowerW", systemsPowerW);
    }

    @Override
    public double powerW(Airframe airframe, double densityKgPerM3, double airspeedMPerS, double climbRateMPerS) {
        double dragN =
                LevelFlight.dragN(polar, airframe.massKg(), airframe.wingAreaM2(), densityKgPerM3, airspeedMPerS);
        double thrustN = dragN + airframe.massKg() * GRAVITY_M_PER_S2 * climbRateMPerS / airspeedMPerS;
        double fraction = efficiency.fraction(airspeedMPerS, thrustN);
        if (!(fraction > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        return thrustN * airspeedMPerS / fraction + systemsPowerW;
    }

    @Override
    public AirspeedRange validAirspeeds(Airframe airframe, double densityKgPerM3) {
        return AirspeedRange.ALL;
    }
}
