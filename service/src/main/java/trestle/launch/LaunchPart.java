package trestle.launch;

/** What a finding or an assumption of {@link LaunchAndClimb} can be about. */
public enum LaunchPart {
    /** Take-off mass. */
    TAKEOFF_MASS,
    /** Wing area. */
    WING_AREA,
    /** Wing span. */
    WING_SPAN,
    /** Maximum lift coefficient. */
    MAX_LIFT_COEFFICIENT,
    /** Drag polar. */
    DRAG,
    /** Static thrust or thrust curve. */
    THRUST,
    /** Altitude, temperature, pressure. */
    CONDITIONS,
    /** Wind at the launch. */
    WIND,
    /** The launch as a whole. */
    LAUNCH,
    /** Release or lift-off speed. */
    RELEASE_SPEED,
    /** Maximum load factor of the launch. */
    MAX_LOAD_FACTOR,
    /** Maximum force on the hook. */
    MAX_HOOK_FORCE,
    /** Airspeed never to exceed. */
    NEVER_EXCEED,
    /** Bank or load factor. */
    TURN
}
