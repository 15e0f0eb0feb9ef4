package trestle.survey;

/** What a finding or an assumption about a survey can be about. */
public enum SurveyPart {
    /** The camera. */
    CAMERA,
    /** Its shortest time between two photos. */
    LEAST_INTERVAL,
    /** Its exposure. */
    EXPOSURE,
    /** Height above the ground. */
    HEIGHT,
    /** Overlap along the track. */
    FORWARD_OVERLAP,
    /** Overlap across it. */
    SIDE_OVERLAP,
    /** The ground. */
    AREA,
    /** Direction of the lines. */
    DIRECTION,
    /** Airspeed. */
    AIRSPEED,
    /** Wind. */
    WIND,
    /** Bank of the turns. */
    BANK,
    /** What each flight has. */
    ENERGY,
    /** Where flights begin. */
    HOME
}
