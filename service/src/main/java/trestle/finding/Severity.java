package trestle.finding;

/** How much a finding weighs, mildest first, so that the worst is the greatest. */
public enum Severity {
    /** Worth knowing; nothing needs doing. */
    NOTE,
    /** Look at it before flying: a margin is thin or an input is doubtful. */
    ATTENTION,
    /** Do not fly or connect it like this: a limit is passed. */
    STOP
}
