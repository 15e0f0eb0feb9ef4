package trestle.charging;

/** What a finding or an assumption about a charge can be about, beside the parts of the pack. */
public enum ChargePart {
    /** The whole request. */
    CHARGE,
    /** Temperature of the cells at the start. */
    PACK_TEMPERATURE,
    /** How the segments are connected. */
    CONNECTION,
    /** The charger. */
    CHARGER,
    /** Its greatest power. */
    CHARGER_POWER,
    /** Its greatest voltage. */
    CHARGER_VOLTAGE,
    /** Its outputs. */
    CHARGER_CHANNELS,
    /** The current of its balancer. */
    BALANCE_CURRENT,
    /** The current that is set. */
    CURRENT,
    /** What the charge is to reach. */
    TARGET,
    /** The voltage that is held. */
    HOLD_VOLTAGE,
    /** How far the cells differ. */
    IMBALANCE,
    /** Where the energy is from. */
    SUPPLY,
    /** The temperature that the cells' rating holds for. */
    COLD_RATING,
    /** How long the pack will rest. */
    STORAGE
}
