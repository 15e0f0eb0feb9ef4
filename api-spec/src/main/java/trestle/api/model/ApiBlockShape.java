package trestle.api.model;

/**
 * A survey but for the aircraft: by itself, or in the document of an aircraft. The generated records of both implement it, so
 * that the compiler holds the two shapes together.
 */
public interface ApiBlockShape {
    /** The camera. */
    ApiSurveyCamera camera();

    /** Ground under one pixel, cm; null where the height is given. */
    Double groundSampleDistanceCm();

    /** Height above the ground, m; null where the ground sample distance is given. */
    Double heightAboveGroundM();

    /** Overlap along the track, %; null where the default holds. */
    Double forwardOverlapPercent();

    /** Overlap across it, %; null where the default holds. */
    Double sideOverlapPercent();

    /** Photos beyond each end of a line; null where the default holds. */
    Integer overrunPhotos();

    /** The ground; null where only its area is given. */
    ApiSurveyArea area();

    /** Its area, km²; null where the ground is given. */
    Double areaKm2();

    /** Direction of the lines, °; null for the best. */
    Double lineDirectionDeg();

    /** The wind; null for none. */
    ApiSurveyWind wind();

    /** The turns; null where the default holds. */
    ApiSurveyTurn turn();

    /** Whether a second pass crosses the first; null where the default holds. */
    Boolean crosshatch();
}
