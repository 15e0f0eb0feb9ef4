package trestle.propulsion;

/** What the propeller of a motor that has stopped does. */
public enum DeadPropellerState {
    /** Turns freely in the wind. */
    WINDMILLING,
    /** Turns in the wind, and its controller brakes it. */
    BRAKED,
    /** Stands still. */
    STOPPED,
    /** Lies folded back. */
    FOLDED
}
