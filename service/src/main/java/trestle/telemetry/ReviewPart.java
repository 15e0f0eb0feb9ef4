package trestle.telemetry;

/** What a review speaks about. */
public enum ReviewPart {
    /** The whole request. */
    FLIGHT,
    /** The log. */
    LOG,
    /** Times of the log. */
    TIME,
    /** One column of the log: its index is that of the {@link Channel}. */
    COLUMN,
    /** What was written down. */
    SUMMARY,
    /** The charge as written down. */
    CHARGE,
    /** The rest voltage as written down. */
    REST_VOLTAGE,
    /** The lowest voltage as written down. */
    LOWEST_VOLTAGE,
    /** The aircraft. */
    AIRCRAFT,
    /** The pack. */
    PACK
}
