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
    /** Forward limit of the CG, as an arm. */
    FORWARD_LIMIT,
    /** Forward limit of the CG, in the mean chord. */
    FORWARD_LIMIT_MAC,
    /** Aft limit of the CG, as an arm. */
    AFT_LIMIT,
    /** Aft limit of the CG, in the mean chord. */
    AFT_LIMIT_MAC,
    /** Lateral limit of the CG. */
    LATERAL_LIMIT,
    /** Where the CG should be, as an arm. */
    TARGET,
    /** Where the CG should be, in the mean chord. */
    TARGET_MAC,
    /** The static margin that there should be. */
    TARGET_MARGIN
}
