package trestle.telemetry;

/**
 * Five seconds of steady flight.
 *
 * @param startS from, s
 * @param airspeedMPerS mean airspeed, m/s
 * @param powerW mean power, less what the climb took, W
 */
public record SteadyStretch(double startS, double airspeedMPerS, double powerW) {}
