package trestle.estimate;

/**
 * What servos and other loads take at the output of their regulator, W. Idle and loaded servos: four of them, measured by
 * the author of a model-aircraft article (20 to 50 mA and 150 to 200 mA at 5 V); all else is usual practice.
 */
public enum RailLoads {
    /** Measured. */
    SERVO_IDLE("servo, standard, idle", 0.10, 0.18, 0.25, true),
    /** Measured. */
    SERVO_LOADED("servo, standard, against 1 kg cm", 0.75, 0.87, 1.0, true),
    /** Idle with 15 % of duty. */
    SERVO_IN_CRUISE("servo in cruise", 0.15, 0.30, 0.60, false),
    /** Large, or in gusts. */
    LARGE_SERVO_IN_CRUISE("servo in cruise, large or in gusts", 0.4, 0.8, 1.5, false),
    /** Radio. */
    RECEIVER("receiver", 0.15, 0.3, 0.5, false),
    /** With its sensors. */
    FLIGHT_COMPUTER("flight computer with sensors", 0.8, 1.5, 2.5, false),
    /** Position. */
    SATELLITE_RECEIVER("satellite receiver", 0.1, 0.25, 0.5, false),
    /** Position to the centimetre. */
    SATELLITE_RECEIVER_RTK("satellite receiver with carrier phase", 0.5, 1.0, 2.0, false),
    /** Sending all the time. */
    TELEMETRY_SMALL("telemetry, class of 100 mW", 0.3, 0.6, 1.0, false),
    /** Sending all the time. */
    TELEMETRY_LARGE("telemetry, class of 1 W", 2, 3.5, 5, false),
    /** Analogue. */
    VIDEO_ANALOGUE("video sender, analogue", 2, 3.5, 6, false),
    /** Digital. */
    VIDEO_DIGITAL("video sender, digital", 5, 9, 15, false),
    /** Beside the flight computer. */
    COMPANION("companion computer", 3, 6, 12, false),
    /** Small. */
    CAMERA_COMPACT("camera, compact", 1.5, 3, 6, false),
    /** For mapping. */
    CAMERA_MAPPING("camera, system or mapping", 3, 5, 8, false),
    /** Holds a camera. */
    GIMBAL("gimbal", 2, 5, 10, false),
    /** Steady. */
    LIGHTS("lights, position", 0.5, 1, 3, false),
    /** Flashing. */
    STROBE("lights, strobe", 1, 3, 8, false),
    /** Answers radar. */
    TRANSPONDER("transponder", 0.5, 1.5, 3, false);

    private final String named;
    private final Spread powerW;
    private final boolean measured;

    RailLoads(String named, double low, double median, double high, boolean measured) {
        this.named = named;
        this.powerW = Spread.between(low, median, high);
        this.measured = measured;
    }

    /** What it is and does. */
    public String named() {
        return named;
    }

    /** Power at the output of its regulator, W. */
    public Spread powerW() {
        return powerW;
    }

    /** Where it is from. */
    public String source() {
        return measured
                ? "four servos measured at 5 V by the author of a model-aircraft article"
                : Estimate.USUAL_PRACTICE;
    }
}
