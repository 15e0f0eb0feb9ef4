package trestle.structure;

/** Where a limit load factor is from. */
public enum LimitFrom {
    /** The request states it. */
    STATED,
    /** The wing was tested to it. */
    PROOF_TEST,
    /** What the wing may bear by this calculation. */
    WING_STRENGTH,
    /** The rule for light aeroplanes. */
    CONVENTION
}
