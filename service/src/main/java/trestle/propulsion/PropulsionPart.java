package trestle.propulsion;

/** What findings and assumptions of this package are about. */
public enum PropulsionPart {
    /** The pack or supply voltage. */
    SUPPLY,
    /** The pack's continuous current. */
    SUPPLY_MAX_CURRENT,
    /** Where the controllers stop the motors. */
    SUPPLY_CUTOFF,
    /** The motor as a whole. */
    MOTOR,
    /** Its speed constant. */
    MOTOR_SPEED_CONSTANT,
    /** Its winding resistance. */
    MOTOR_RESISTANCE,
    /** Its no-load current. */
    MOTOR_NO_LOAD_CURRENT,
    /** Its current rating. */
    MOTOR_MAX_CURRENT,
    /** Its power rating. */
    MOTOR_MAX_POWER,
    /** How long it may be run at its ratings. */
    MOTOR_RATING_DURATION,
    /** The controller as a whole. */
    CONTROLLER,
    /** Its current rating. */
    CONTROLLER_MAX_CURRENT,
    /** Its voltage rating. */
    CONTROLLER_MAX_VOLTAGE,
    /** The propeller as a whole. */
    PROPELLER,
    /** Its diameter. */
    PROPELLER_DIAMETER,
    /** Its pitch. */
    PROPELLER_PITCH,
    /** Its number of blades. */
    PROPELLER_BLADES,
    /** Its kind of blade. */
    PROPELLER_BLADE_TYPE,
    /** Its static test. */
    PROPELLER_STATIC_TEST,
    /** Its measured table. */
    PROPELLER_TABLE,
    /** Its greatest rotation. */
    PROPELLER_MAX_ROTATION,
    /** Thrust or drag that cruise asks. */
    CRUISE_THRUST,
    /** Cruise airspeed. */
    CRUISE_AIRSPEED,
    /** An airspeed of the curve; index into the list. */
    AIRSPEED,
    /** Take-off mass. */
    TAKEOFF_MASS,
    /** Wing area. */
    WING_AREA,
    /** Maximum lift coefficient. */
    MAX_LIFT,
    /** Current that the wires may carry. */
    WIRE_CURRENT,
    /** Current that the connector is rated for. */
    CONNECTOR_CURRENT,
    /** Airspeed that must never be exceeded. */
    NEVER_EXCEED,
    /** How long full throttle is held. */
    FULL_THROTTLE_DURATION
}
