package trestle.review;

/** What an aircraft may do without. */
public enum Fitting {
    /** Runs of wire worth a calculation. */
    WIRING,
    /** Regulated rails. */
    RAILS,
    /** A magnetic compass. */
    COMPASS,
    /** What gives it flying speed, a hand included. */
    LAUNCHER
}
