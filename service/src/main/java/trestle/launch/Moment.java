package trestle.launch;

/**
 * A moment of a launch.
 *
 * @param timeS time from release, s
 * @param heightM height above the ground, m
 * @param airspeedMPerS airspeed, m/s
 */
public record Moment(double timeS, double heightM, double airspeedMPerS) {}
