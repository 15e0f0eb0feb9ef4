package trestle.review;

/**
 * The packs at full throttle, from take-off.
 *
 * @param powerW power asked for, W
 * @param currentA greatest current, A
 * @param lowestVoltageV lowest voltage, V
 * @param held whether the packs hold it for as long as is asked
 */
public record FullThrottle(double powerW, double currentA, double lowestVoltageV, boolean held) {}
