package trestle.flight;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * An aircraft with its power source in air of one density: what it takes to fly at an airspeed, and
 * the airspeeds worth flying.
 *
 * @param airframe the aircraft
 * @param power where its power comes from
 * @param densityKgPerM3 density, kg/m³
 */
record SteadyFlight(Airframe airframe, PowerSource power, double densityKgPerM3) {
    /** Recommended airspeeds keep this many stall speeds: common practice, no source. */
    static final double FLOOR_IN_STALL_SPEEDS = 1.2;

    /** Climbs keep this many stall speeds, as the airworthiness rules of small aeroplanes do. */
    static final double CLIMB_IN_STALL_SPEEDS = 1.3;

    /** Beyond about Mach 0.4 the drag of an incompressible polar means nothing. */
    static final double GREATEST_AIRSPEED_M_PER_S = 140;

    double stallSpeedMPerS() {
        return airframe.stallSpeedMPerS(densityKgPerM3);
    }

    double floorMPerS() {
        return FLOOR_IN_STALL_SPEEDS * stallSpeedMPerS();
    }

    AirspeedRange validAirspeeds() {
        return power.validAirspeeds(airframe, densityKgPerM3);
    }

    double powerW(double airspeedMPerS) {
        return climbPowerW(airspeedMPerS, 0);
    }

    double climbPowerW(double airspeedMPerS, double climbRateMPerS) {
        return power.powerW(airframe, densityKgPerM3, airspeedMPerS, climbRateMPerS);
    }

    /** Airspeed of least pack power that keeps the floor; empty where none can be flown. */
    OptionalDouble leastPowerAirspeedMPerS() {
        return leastPowerAirspeedMPerS(SpeedSearch.FINE);
    }

    /** The same by a grid of so many points. */
    OptionalDouble leastPowerAirspeedMPerS(int points) {
        return cheapest(this::powerW, leastRecommendedMPerS(), points);
    }

    /**
     * Airspeed that gets furthest over the ground.
     *
     * @param headwindMPerS wind against the flight, m/s
     * @param usableEnergyJ usable energy, J, as a function of power, W
     * @return the airspeed; empty where none beats the wind
     */
    OptionalDouble furthestAirspeedMPerS(double headwindMPerS, DoubleUnaryOperator usableEnergyJ) {
        return cheapest(
                v -> {
                    double groundMPerS = v - headwindMPerS;
                    double powerW = powerW(v);
                    double energyJ = usableEnergyJ.applyAsDouble(powerW);
                    return groundMPerS > 0 && energyJ > 0 ? powerW / (groundMPerS * energyJ) : Double.POSITIVE_INFINITY;
                },
                Math.max(leastRecommendedMPerS(), headwindMPerS),
                SpeedSearch.FINE);
    }

    private double leastRecommendedMPerS() {
        return Math.max(floorMPerS(), validAirspeeds().leastMPerS());
    }

    private OptionalDouble cheapest(DoubleUnaryOperator cost, double leastMPerS, int points) {
        double cap = Math.min(validAirspeeds().greatestMPerS(), GREATEST_AIRSPEED_M_PER_S);
        return SpeedSearch.leastAt(cost, leastMPerS, SpeedSearch.upperEnd(cost, 2 * leastMPerS, cap), points);
    }
}
