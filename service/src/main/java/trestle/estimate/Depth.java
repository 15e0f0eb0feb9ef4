package trestle.estimate;

/** How thoroughly a band is sought. */
public enum Depth {
    /** A fitted sample. */
    FULL,
    /** Each unknown alone at its 10 and 90 % points: the right width and order, a middle some per cent off. */
    QUICK
}
