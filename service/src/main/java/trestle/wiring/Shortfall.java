package trestle.wiring;

/** Why a gauge does not meet a task. */
public enum Shortfall {
    /** The copper settles above the insulation's rating less the margin. */
    TEMPERATURE,
    /** It never settles below the melting point of copper. */
    RUNAWAY,
    /** The peak takes it above the insulation's rating. */
    PEAK,
    /** What it touches does not stand its temperature. */
    SURFACE,
    /** The drop, connectors included, is above the limit. */
    DROP,
    /** The drop in the peak, connectors included, is above the limit of that. */
    PEAK_DROP,
    /** A connector carries more than it is rated for; no gauge helps. */
    CONNECTOR
}
