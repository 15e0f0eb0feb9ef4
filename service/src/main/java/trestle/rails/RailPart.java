package trestle.rails;

/** What findings and assumptions on rails are about; indices in brackets. */
public enum RailPart {
    /** The pack. */
    SUPPLY,
    /** All rails. */
    RAILS,
    /** The regulator of a rail (rail). */
    REGULATOR,
    /** Its continuous rating (rail). */
    MAX_CURRENT,
    /** Its peak rating (rail). */
    PEAK_CURRENT,
    /** Lowest input it regulates from (rail). */
    INPUT_MIN,
    /** Maximum input voltage (rail). */
    INPUT_MAX,
    /** The loads of a rail (rail). */
    LOADS,
    /** The peak current of a load (rail, load). */
    PEAK_OF_LOAD
}
