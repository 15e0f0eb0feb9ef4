package trestle.review;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A run of wire that passes the compass.
 *
 * @param runIndex which run of the aircraft, from 0
 * @param separationM distance between the axes of its two leads, m, above 0; empty for leads that
 *     touch
 * @param twisted whether the two are twisted about each other
 * @param distanceM distance from the compass to the middle between them, m, above 0
 */
public record CompassLead(int runIndex, OptionalDouble separationM, boolean twisted, double distanceM) {
    /** Checks the physics. */
    public CompassLead {
        separationM.ifPresent(value -> Guard.positive("separationM", value));
        Guard.positive("distanceM", distanceM);
    }
}
