package trestle.launch;

/** How a launch ends. */
public enum LaunchOutcome {
    /** At the climb speed, no longer sinking. */
    CLIMB_SPEED_REACHED,
    /** In the ground. */
    GROUND,
    /** In the air after ten seconds, still below the climb speed. */
    TOO_SLOW,
    /** It never left the dolly or the ramp. */
    NEVER_RELEASED
}
