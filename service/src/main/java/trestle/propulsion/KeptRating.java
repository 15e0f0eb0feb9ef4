package trestle.propulsion;

/** A rating that limits the throttle. */
public enum KeptRating {
    /** Current in a motor. */
    MOTOR_CURRENT("motor current"),
    /** Electrical power into a motor. */
    MOTOR_POWER("power into a motor"),
    /** Current in a motor controller. */
    CONTROLLER_CURRENT("controller current"),
    /** Current from the pack. */
    PACK_CURRENT("pack current"),
    /** Current in the wires of the pack. */
    WIRE("current in the wires"),
    /** Current in the connector of the pack. */
    CONNECTOR("current in the connector"),
    /** Speed of the propeller. */
    PROPELLER_ROTATION("propeller speed"),
    /** Airspeed that the airframe must never exceed. */
    NEVER_EXCEED("level top speed");

    private final String label;

    KeptRating(String label) {
        this.label = label;
    }

    /** The words for messages, to follow an article. */
    String label() {
        return label;
    }
}
