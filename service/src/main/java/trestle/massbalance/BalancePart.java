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
    /** How high the tail stands. */
    TAIL_HEIGHT,
    /** The dihedral of a V-tail. */
    TAIL_DIHEDRAL,
    /** The fuselage's share in the neutral point. */
    FUSELAGE_SHIFT,
    /** Maximum take-off mass. */
    MAXIMUM_TAKEOFF_MASS,
    /** Forward limit of the CG. */
    FORWARD_LIMIT,
    /** Aft limit of the CG. */
    AFT_LIMIT,
    /** Lateral limit of the CG. */
    LATERAL_LIMIT,
    /** Where the CG should be. */
    TARGET
}
