package trestle.flight;

import java.util.OptionalDouble;

/**
 * A leg as planned and as flown.
 *
 * @param leg the leg asked for
 * @param status what became of it
 * @param airspeedMPerS airspeed, m/s
 * @param powerW pack power, W; 0 where the leg is not flyable
 * @param plannedDurationS planned duration, s; 0 where the leg is not flyable
 * @param plannedEnergyJ planned energy, J; 0 where the leg is not flyable
 * @param startS start, s from the start of the flight; where not reached, the end of the flight
 * @param endS end, s from the start of the flight
 * @param energyJ energy taken, J
 * @param groundDistanceM distance over the ground, m; 0 for a loiter
 * @param lowestVoltageV lowest pack voltage, V; empty where the store has none or the leg was not
 *     begun
 * @param meanCurrentA mean current, A; likewise
 */
public record LegResult(
        Leg leg,
        LegStatus status,
        double airspeedMPerS,
        double powerW,
        double plannedDurationS,
        double plannedEnergyJ,
        double startS,
        double endS,
        double energyJ,
        double groundDistanceM,
        OptionalDouble lowestVoltageV,
        OptionalDouble meanCurrentA) {}
