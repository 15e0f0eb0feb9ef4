package trestle.telemetry;

/**
 * Mean power of steady flight, where no curve can be told.
 *
 * @param airspeedMPerS mean airspeed, m/s
 * @param powerW mean power, W
 * @param deviationW standard deviation of that mean, W
 */
public record PowerAtSpeed(double airspeedMPerS, double powerW, double deviationW) {}
