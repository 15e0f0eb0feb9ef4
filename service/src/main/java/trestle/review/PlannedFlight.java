package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.flight.Conditions;
import trestle.flight.Leg;

/**
 * The day and the flight.
 *
 * @param conditions the air
 * @param packTemperatureK temperature of the cells at take-off, K; empty for that of the air
 * @param headwindMPerS wind against the flight, m/s; below 0 for a tailwind
 * @param reserveFraction share of the usable energy that is kept, 0 to below 1
 * @param cruiseAirspeedMPerS cruising airspeed, m/s; empty for that of best range
 * @param legs legs in order; empty for none
 * @param launch how the aircraft gets away; empty where it is not asked
 */
public record PlannedFlight(
        Conditions conditions,
        OptionalDouble packTemperatureK,
        double headwindMPerS,
        double reserveFraction,
        OptionalDouble cruiseAirspeedMPerS,
        List<Leg> legs,
        Optional<LaunchPlan> launch) {
    /** Copies the list. */
    public PlannedFlight {
        legs = List.copyOf(legs);
    }
}
