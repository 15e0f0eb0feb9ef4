package trestle.flight;

/** Why an energy store ended. */
public enum StoreEnd {
    /** Nothing is left. */
    EMPTY,
    /** The voltage fell to the cutoff. */
    CUTOFF,
    /** It cannot give that power at any current. */
    POWER_LIMIT
}
