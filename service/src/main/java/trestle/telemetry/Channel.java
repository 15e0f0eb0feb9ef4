package trestle.telemetry;

/** What a column of a log holds, in SI units. */
public enum Channel {
    /** Pack voltage, V. */
    VOLTAGE("voltage", true),
    /** Pack current, A, positive out of the pack. */
    CURRENT("current", true),
    /** The recorder's own count of charge, C. */
    CHARGE_COUNTER("charge counter", false),
    /** True airspeed, m/s. */
    AIRSPEED("airspeed", true),
    /** Speed over the ground, m/s. */
    GROUND_SPEED("ground speed", true),
    /** Height above any level, m. */
    ALTITUDE("altitude", true),
    /** Latitude, rad. */
    LATITUDE("latitude", true),
    /** Longitude, rad. */
    LONGITUDE("longitude", true),
    /** Direction of travel over the ground, rad from north, clockwise. */
    TRACK("track", false),
    /** Ground velocity to the north, m/s. */
    VELOCITY_NORTH("velocity north", true),
    /** Ground velocity to the east, m/s. */
    VELOCITY_EAST("velocity east", true);

    private final String said;
    private final boolean lively;

    Channel(String said, boolean lively) {
        this.said = said;
        this.lively = lively;
    }

    /**
     * Its name in a sentence.
     *
     * @return the name
     */
    public String said() {
        return said;
    }

    /** Whether a sensor of this kind that works never shows the same figure for long in flight. */
    boolean isLively() {
        return lively;
    }
}
