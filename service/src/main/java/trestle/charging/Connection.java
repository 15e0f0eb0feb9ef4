package trestle.charging;

/** How the segments of a pack are charged. */
public enum Connection {
    /** All as one string. */
    IN_SERIES,
    /** Each on an output of its own, at the same time. */
    SEPARATELY,
    /** On one output, one after another. */
    ONE_AFTER_ANOTHER
}
