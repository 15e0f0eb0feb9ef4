package trestle.propulsion;

/** A rating that limits the throttle. */
public enum KeptRating {
    /** Current in a motor. */
    MOTOR_CURRENT("the motor current"),
    /** Electrical power into a motor. */
    MOTOR_POWER("the power into a motor"),
    /** Current in a motor controller. */
    CONTROLLER_CURRENT("the controller current"),
    /** Current from the pack. */
    PACK_CURRENT("the pack current"),
    /** Current in the wires of the pack. */
    WIRE("the current in the wires"),
    /** Current in the connector of the pack. */
    CONNECTOR("the current in the connector"),
    /** Speed of the propeller. */
    PROPELLER_ROTATION("the propeller speed"),
    /** Airspeed that the airframe must never exceed. */
    NEVER_EXCEED("the level top speed");

    private final String label;

    KeptRating(String label) {
        this.label = label;
    }

    /** The words for messages. */
    String label() {
        return label;
    }
}
