package trestle.flight;

/** What became of a leg. */
public enum LegStatus {
    /** Flown to its end. */
    FLOWN,
    /** The energy ended within it. */
    RAN_OUT,
    /** The flight ended before it. */
    NOT_REACHED,
    /** Below the stall speed, in more wind than airspeed, or more than the propulsion gives. */
    NOT_FLYABLE
}
