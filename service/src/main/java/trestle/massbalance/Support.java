package trestle.massbalance;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A scale under one point of the aircraft.
 *
 * @param name what it is called
 * @param readingKg what the scale shows, kg, 0 or more
 * @param tareKg what of it is not the aircraft (chock, stand), kg, 0 or more
 * @param armM the point's distance aft of the datum, m
 * @param lateralM the point's distance right of the plane of symmetry, m; empty where not measured
 * @param readingToleranceKg bound on the error of the reading, kg
 * @param placeToleranceM bound on the error of the point's place, m
 */
public record Support(
        String name,
        double readingKg,
        double tareKg,
        double armM,
        OptionalDouble lateralM,
        double readingToleranceKg,
        double placeToleranceM) {
    /** A household scale in good order, kg; common practice, no source. */
    public static final double USUAL_READING_TOLERANCE_KG = 0.002;

    /**
     * A wheel's point of contact, plumbed to the floor and taped, m; common practice, no source.
     */
    public static final double USUAL_PLACE_TOLERANCE_M = 0.001;

    /** Checks the physics. */
    public Support {
        Guard.present("name", name);
        Guard.notNegative("readingKg", readingKg);
        Guard.notNegative("tareKg", tareKg);
        Guard.finite("armM", armM);
        lateralM.ifPresent(value -> Guard.finite("lateralM", value));
        Guard.notNegative("readingToleranceKg", readingToleranceKg);
        Guard.notNegative("placeToleranceM", placeToleranceM);
    }

    /**
     * What of the reading is aircraft.
     *
     * @return reading less tare, kg; below 0 where the tare is the larger
     */
    public double netKg() {
        return readingKg - tareKg;
    }
}
