package trestle.charging;

/** Why a charge ended. */
public enum ChargeEnd {
    /** What was asked for is reached. */
    REACHED,
    /** It was there from the start. */
    NOTHING_TO_CHARGE,
    /** The cells are too cold. */
    TOO_COLD,
    /** The cells are, or become, too hot. */
    TOO_HOT,
    /** It takes more than a day. */
    TOO_LONG
}
