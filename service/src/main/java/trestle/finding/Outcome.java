package trestle.finding;

/** How a check came out. */
public enum Outcome {
    /** Inside its limit. */
    PASSED,
    /** A margin is thin, or an input is doubtful. */
    ATTENTION,
    /** A limit is passed. */
    STOP,
    /** What it needs is not given. */
    NOT_JUDGED
}
