package trestle.review;

import trestle.launch.Launch;
import trestle.launch.LaunchLimits;
import trestle.launch.LaunchWind;
import trestle.launch.Turn;

/**
 * How the aircraft is launched.
 *
 * @param launch the launch
 * @param wind its wind
 * @param limits what aircraft and hook are good for
 * @param motorDelayS time from release until the motor pulls, s
 * @param turn the turn to report on
 */
public record LaunchPlan(Launch launch, LaunchWind wind, LaunchLimits limits, double motorDelayS, Turn turn) {}
