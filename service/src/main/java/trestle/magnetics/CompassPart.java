package trestle.magnetics;

/** What findings and assumptions on the compass are about; indices in brackets. */
public enum CompassPart {
    /** All runs. */
    RUNS,
    /** How far one run is (run). */
    DISTANCE,
    /** What one run carries at full throttle (run). */
    PEAK_CURRENT,
    /** Whether one run is twisted (run). */
    TWISTED,
    /** The earth's field. */
    EARTH_FIELD,
    /** The allowed heading error. */
    ALLOWED_ERROR
}
