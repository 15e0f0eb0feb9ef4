package trestle.charging;

/** What sets the current of a charge. */
public enum LimitedBy {
    /** The current that was set. */
    REQUEST,
    /** The rating of the cells. */
    CELL_RATING,
    /** The rating, less in the cold. */
    COLD,
    /** Warm cells. */
    HOT,
    /** The greatest current of the charger. */
    CHARGER_CURRENT,
    /** Its greatest power. */
    CHARGER_POWER,
    /** The power of the supply. */
    SUPPLY_POWER,
    /** The hold voltage: the cells are nearly full at the start. */
    HOLD_VOLTAGE
}
