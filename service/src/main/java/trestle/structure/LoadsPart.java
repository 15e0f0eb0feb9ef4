package trestle.structure;

/** What findings and assumptions are about; indices in brackets. */
public enum LoadsPart {
    /** The whole request. */
    ALL,
    /** The spars. */
    SPARS,
    /** A joint (joint). */
    JOINT,
    /** Its socket (joint). */
    SOCKET,
    /** Planned airspeed. */
    CRUISE,
    /** Level top speed. */
    TOP,
    /** Speed never to be exceeded. */
    NEVER_EXCEED,
    /** The launch. */
    LAUNCH,
    /** What the hook is good for. */
    HOOK,
    /** The landing. */
    LANDING,
    /** A restraint (restraint). */
    RESTRAINT,
    /** A control surface (surface). */
    SURFACE,
    /** Its servo (surface). */
    SERVO,
    /** Moduli of the foam. */
    FOAM
}
