package trestle.survey;

import trestle.numeric.Guard;

/**
 * A place on the ground, in the order of GeoJSON.
 *
 * @param longitudeDeg longitude, °, −180 to 180
 * @param latitudeDeg latitude, °, −90 to 90
 */
public record Position(double longitudeDeg, double latitudeDeg) {
    /** Checks the ranges. */
    public Position {
        Guard.within("longitudeDeg", longitudeDeg, -180.000001, 180.000001);
        Guard.within("latitudeDeg", latitudeDeg, -90, 90);
    }
}
