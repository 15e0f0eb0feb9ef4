package trestle.endpoint.launch;

import java.util.List;
import trestle.flight.Leg;

/**
 * The wind of a flight.
 *
 * @param headwindMPerS wind against it, m/s; below 0 for a tailwind
 * @param heightM height above the ground that it blows at, m
 */
public record FlightWind(double headwindMPerS, double heightM) {
    /** Where a first leg says nothing of its height: common practice, no source. */
    private static final double USUAL_HEIGHT_M = 100;

    /**
     * The wind of a flight, at the height of its first leg.
     *
     * @param headwindMPerS wind against it, m/s
     * @param legs the legs in order
     * @return the wind
     */
    public static FlightWind of(double headwindMPerS, List<Leg> legs) {
        boolean climbs = !legs.isEmpty() && legs.get(0) instanceof Leg.Climb;
        return new FlightWind(headwindMPerS, climbs ? ((Leg.Climb) legs.get(0)).heightM() : USUAL_HEIGHT_M);
    }
}
