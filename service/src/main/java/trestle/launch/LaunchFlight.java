package trestle.launch;

import java.util.OptionalDouble;

/**
 * A launch from standstill to safe flight or its failure.
 *
 * @param outcome how it ends
 * @param releaseAirspeedMPerS airspeed at release, m/s; the fastest reached where it never left
 * @param marginFraction that over the stall speed, less 1; below 0 under the stall
 * @param heightLostM height lost from release to the lowest point, m
 * @param timeToSafeSpeedS from release to safe climb speed, s; empty where it is not reached
 * @param groundRunM way along ground, ramp or rail, m; empty for a throw
 * @param runTimeS time of that, s; 0 for a throw
 * @param meanAccelerationMPerS2 mean acceleration along it, m/s²; empty for a throw
 */
public record LaunchFlight(
        LaunchOutcome outcome,
        double releaseAirspeedMPerS,
        double marginFraction,
        double heightLostM,
        OptionalDouble timeToSafeSpeedS,
        OptionalDouble groundRunM,
        double runTimeS,
        OptionalDouble meanAccelerationMPerS2) {}
