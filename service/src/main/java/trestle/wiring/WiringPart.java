package trestle.wiring;

/** What a finding or an assumption of this package can be about. */
public enum WiringPart {
    /** The run as a whole. */
    RUN,
    /** Continuous current. */
    CURRENT,
    /** One-way length. */
    LENGTH,
    /** Supply voltage. */
    SUPPLY_VOLTAGE,
    /** Peak current. */
    PEAK_CURRENT,
    /** Duration of the peak. */
    PEAK_DURATION,
    /** Maximum drop allowed. */
    MAX_DROP,
    /** Maximum drop allowed in the peak. */
    MAX_PEAK_DROP,
    /** What the wire touches. */
    TOUCHES,
    /** American or metric sizes. */
    GAUGE_SYSTEM,
    /** The one gauge that was asked about. */
    GAUGE,
    /** Wires in parallel for each of the two directions. */
    PARALLEL_WIRES,
    /** Kind of insulation. */
    INSULATION,
    /** Wall of the insulation. */
    INSULATION_THICKNESS,
    /** Ambient temperature. */
    AMBIENT,
    /** Altitude. */
    ALTITUDE,
    /** Conductors that lie together. */
    BUNDLED_CONDUCTORS,
    /** What surrounds the wire. */
    ENCLOSURE,
    /** Wall of the foam around a channel. */
    FOAM_WALL,
    /** The connectors. */
    CONNECTORS,
    /** A connector; one index. */
    CONNECTOR,
    /** The fuse. */
    FUSE,
    /** Its rated current. */
    FUSE_RATING,
    /** The highest voltage that it may break. */
    FUSE_VOLTAGE,
    /** The highest current that it can break. */
    FUSE_BREAKING,
    /** The highest voltage at the supply. */
    FULL_VOLTAGE,
    /** The resistance before the run. */
    SOURCE_RESISTANCE,
    /** The capacitance at the end of the run. */
    CAPACITANCE,
    /** The energy that the precharge resistor stands. */
    PRECHARGE_RATING,
    /** Flight data for the endurance trade. */
    FLIGHT
}
