package trestle.battery;

/** What a finding or an assumption about a pack can be about. */
public enum PackPart {
    /** The pack as a whole. */
    PACK,
    /** One segment; index of the segment. */
    SEGMENT,
    /** Cells in series of a segment; index of the segment. */
    SERIES,
    /** The cell of a segment; index of the segment. */
    CELL,
    /** Its chemistry; index of the segment. */
    CHEMISTRY,
    /** Its capacity; index of the segment. */
    CAPACITY,
    /** Its resistance, direct current; index of the segment. */
    DC_RESISTANCE,
    /** Its resistance, alternating current; index of the segment. */
    AC_RESISTANCE,
    /** Mass of a finished segment; index of the segment. */
    BLOCK_MASS,
    /** Mass of its cell; index of the segment. */
    CELL_MASS,
    /** Its continuous current; index of the segment. */
    MAX_CONTINUOUS_CURRENT,
    /** Its charging current; index of the segment. */
    MAX_CHARGE_CURRENT,
    /** Its minimum voltage; index of the segment. */
    MINIMUM_VOLTAGE,
    /** Its full voltage; index of the segment. */
    FULL_VOLTAGE,
    /** Its open-circuit curve; index of the segment. */
    OPEN_CIRCUIT_CURVE,
    /** Health of a segment; index of the segment. */
    HEALTH,
    /** State of charge of a segment; index of the segment. */
    STATE_OF_CHARGE,
    /** The load. */
    LOAD,
    /** The load's profile. */
    PROFILE,
    /** A step of the load's profile; index of the step. */
    PROFILE_STEP,
    /** The cutoff. */
    CUTOFF,
    /** The count of cells that a controller believes in. */
    COUNTED_CELLS,
    /** Temperature of the air. */
    AMBIENT,
    /** Resistance of the leads. */
    LEAD_RESISTANCE,
    /** The reserve. */
    RESERVE,
    /** What covers the pack. */
    COVERING
}
