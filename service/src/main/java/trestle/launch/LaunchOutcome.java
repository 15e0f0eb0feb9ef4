package trestle.launch;

/** How a launch ends. */
public enum LaunchOutcome {
    /** At the safe climb speed, no longer sinking. */
    SAFE_SPEED,
    /** In the ground. */
    GROUND,
    /** In the air after ten seconds, still below the safe climb speed. */
    TOO_SLOW,
    /** It never left the dolly or the ramp. */
    NEVER_RELEASED
}
