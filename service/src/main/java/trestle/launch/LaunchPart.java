package trestle.launch;

/** What a finding or an assumption of {@link LaunchStall} can be about. */
public enum LaunchPart {
    /** Take-off mass. */
    TAKEOFF_MASS,
    /** Greatest lift coefficient. */
    MAX_LIFT_COEFFICIENT,
    /** Drag polar. */
    DRAG,
    /** Static thrust or thrust curve. */
    THRUST,
    /** Altitude, temperature, pressure. */
    CONDITIONS,
    /** Headwind. */
    HEADWIND,
    /** The launch as a whole. */
    LAUNCH,
    /** Release or lift-off speed. */
    RELEASE_SPEED,
    /** Bank or load factor. */
    TURN
}
