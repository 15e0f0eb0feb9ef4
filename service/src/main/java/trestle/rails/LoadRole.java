package trestle.rails;

/** What a load is to the flight. */
public enum LoadRole {
    /** Moves a control surface or a valve: takes bursts and stalls. */
    SERVO,
    /** Steers: flight controller, receiver, navigation. Must not brown out. */
    FLIGHT_CONTROL,
    /** Anything the aircraft flies on without. */
    OTHER
}
