package trestle.structure;

/** Shape of a spar or joiner. */
public enum SparShape {
    /** A round tube. */
    TUBE,
    /** A round rod. */
    ROD,
    /** A solid rectangle. */
    RECTANGLE,
    /** Two caps with a web between. */
    CAPPED
}
