package trestle.telemetry;

/** What a stretch of a flight is. */
public enum PhaseKind {
    /** Before the first flight. */
    ON_THE_GROUND,
    /** Gaining height. */
    CLIMB,
    /** Level and straight. */
    CRUISE,
    /** Level, turning. */
    TURN,
    /** Losing height under power. */
    DESCENT,
    /** Losing height with the motor all but off. */
    GLIDE,
    /** After the flight. */
    LANDED
}
