package trestle.flight;

import java.util.OptionalDouble;

/**
 * Level flight at one airspeed until the reserve is reached.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param liftCoefficient lift coefficient
 * @param powerW pack power, W
 * @param currentA mean pack current, A; empty where the store has no voltage
 * @param enduranceS time to the reserve, s
 * @param stillAirRangeM distance through the air, m
 * @param groundRangeM distance over the ground, m; 0 where the wind is not overcome
 * @param energyPerGroundMJ energy per metre over the ground, J/m; empty where the wind is not
 *     overcome
 * @param end what would end the discharge if the reserve were flown as well
 */
public record SpeedPoint(
        double airspeedMPerS,
        double liftCoefficient,
        double powerW,
        OptionalDouble currentA,
        double enduranceS,
        double stillAirRangeM,
        double groundRangeM,
        OptionalDouble energyPerGroundMJ,
        StoreEnd end) {}
