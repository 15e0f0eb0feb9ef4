package trestle.review;

/** What a finding or an assumption of the review itself is about. */
public enum ReviewPart {
    /** The cruising airspeed. */
    CRUISE_AIRSPEED,
    /** Power at full throttle. */
    FULL_THROTTLE,
    /** A run of wire; index of the run. */
    RUN,
    /** Where a run of wire lies; index of the run. */
    RUN_ARM,
    /** Temperature of the packs at take-off. */
    PACK_TEMPERATURE,
    /** The runs of wire. */
    WIRING,
    /** The regulated rails. */
    RAILS,
    /** The compass. */
    COMPASS,
    /** How the packs are charged. */
    CHARGING,
    /** The ground to be covered. */
    SURVEY,
    /** The go-around at the end of the flight. */
    GO_AROUND,
    /** From the centre line to the outermost motor. */
    MOTOR_LATERAL,
    /** What the propeller of a motor that has stopped does. */
    DEAD_PROPELLER,
    /** Fins and rudders. */
    TAIL_FIN,
    /** How it is launched. */
    LAUNCH,
    /** Where the parts of the drive sit. */
    DRIVE_PLACES,
    /** What is on board. */
    ITEMS,
    /** The mass allowed at take-off. */
    MASS_LIMIT,
    /** The greatest continuous current of the cells. */
    CELL_RATING
}
