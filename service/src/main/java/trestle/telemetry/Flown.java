package trestle.telemetry;

import java.util.OptionalDouble;

/**
 * What is known of the aircraft and the day of a log.
 *
 * @param massKg mass flown, kg
 * @param systemsPowerW power that does not depend on airspeed, W
 * @param densityKgPerM3 density of the air, kg/m³
 * @param climbEfficiencyFraction from pack power to thrust power, to take the climb out of the power, 0 to 1
 */
public record Flown(
        OptionalDouble massKg, double systemsPowerW, double densityKgPerM3, double climbEfficiencyFraction) {
    /** From pack to thrust where nobody knows: common practice, no source. */
    public static final double USUAL_CLIMB_EFFICIENCY = 0.5;

    /** Power that a climb takes over its rate, N; 0 where the mass is not known. */
    double climbPowerPerSpeedN() {
        return massKg.isPresent()
                ? SteadyStretches.weightOverEfficiencyN(massKg.getAsDouble(), climbEfficiencyFraction)
                : 0;
    }
}
