package trestle.wiring;

/** What surrounds a wire. */
public enum Enclosure {
    /** Open air that is free to rise. */
    FREE_AIR,
    /** The still air of a closed bay, warmer than outside. */
    STILL_BAY,
    /** A channel in foam that the wire fills: no air, no radiation, only conduction. */
    FOAM_CHANNEL
}
