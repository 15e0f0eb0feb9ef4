package trestle.figure;

import trestle.numeric.Guard;

/**
 * A moment of a launch.
 *
 * @param timeS time from release, s, 0 or more
 * @param heightM height above the ground, m
 * @param airspeedMPerS airspeed, m/s, 0 or more
 */
public record LaunchMoment(double timeS, double heightM, double airspeedMPerS) {
    /** Checks the numbers. */
    public LaunchMoment {
        Guard.notNegative("timeS", timeS);
        Guard.finite("heightM", heightM);
        Guard.notNegative("airspeedMPerS", airspeedMPerS);
    }
}
