package trestle.massbalance;

/** What findings and assumptions on mass and balance are about; indices in brackets. */
public enum BalancePart {
    /** The list of items as a whole. */
    ITEMS,
    /** Where one item can be moved (item). */
    ITEM_TRAVEL,
    /** The weighing as a whole. */
    WEIGHING,
    /** One scale (support). */
    SUPPORT,
    /** Its place from the plane of symmetry (support). */
    SUPPORT_LATERAL,
    /** The wing. */
    WING,
    /** The wing's panels. */
    PANELS,
    /** The tail. */
    TAIL,
    /** Where the tail's quarter chord lies. */
    TAIL_ARM,
    /** The fuselage's share in the neutral point. */
    FUSELAGE_SHIFT,
    /** Greatest mass. */
    MAXIMUM_TAKEOFF_MASS,
    /** Foremost CG. */
    FORWARD_LIMIT,
    /** Aftmost CG. */
    AFT_LIMIT,
    /** Greatest lateral CG. */
    LATERAL_LIMIT,
    /** Where the CG should be. */
    TARGET
}
