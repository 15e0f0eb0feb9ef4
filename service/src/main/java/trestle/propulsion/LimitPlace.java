package trestle.propulsion;

/** Where in flight a rating limits the throttle. */
public enum LimitPlace {
    /** Standing still. */
    REST,
    /** Slow flight, up to the climb speed. */
    CLIMB,
    /** The fastest level flight at that throttle. */
    LEVEL_TOP_SPEED
}
