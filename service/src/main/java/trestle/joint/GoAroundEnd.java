package trestle.joint;

/** What ends a go-around at full power. */
public enum GoAroundEnd {
    /** Nothing, for as long as was looked. */
    HELD,
    /** The cutoff. */
    CUTOFF,
    /** The pack cannot give the power at all. */
    POWER_LIMIT,
    /** A segment's cells are driven to where harm begins. */
    OVER_DISCHARGE
}
