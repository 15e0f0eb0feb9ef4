package trestle.flight;

/** What a finding or an assumption of {@link Endurance} can be about. */
public enum FlightPart {
    /** The aircraft as a whole. */
    AIRCRAFT,
    /** Take-off mass. */
    TAKEOFF_MASS,
    /** Greatest lift coefficient. */
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
    /** Battery mass and mass limit. */
    BATTERY
}
