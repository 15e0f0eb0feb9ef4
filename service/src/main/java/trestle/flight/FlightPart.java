package trestle.flight;

/** What a finding or an assumption of {@link Endurance} can be about. */
public enum FlightPart {
    /** The aircraft as a whole. */
    AIRCRAFT,
    /** Take-off mass. */
    TAKEOFF_MASS,
    /** Wing area. */
    WING_AREA,
    /** Wing span. */
    WING_SPAN,
    /** Maximum lift coefficient. */
    MAX_LIFT_COEFFICIENT,
    /** Drag polar. */
    DRAG,
    /** Efficiencies of the propulsion. */
    EFFICIENCY,
    /** Measured power curve. */
    POWER_CURVE,
    /** Calibration from a flight log. */
    CALIBRATION,
    /** The pack or the usable energy. */
    ENERGY,
    /** A described pack. */
    PACK,
    /** Altitude, temperature, pressure. */
    CONDITIONS,
    /** Headwind. */
    HEADWIND,
    /** Reserve. */
    RESERVE,
    /** The airspeed that was asked about. */
    AIRSPEED,
    /** A leg; index: its place. */
    LEG,
    /** Pack mass. */
    PACK_MASS,
    /** Mass limit. */
    MAX_TAKEOFF_MASS
}
