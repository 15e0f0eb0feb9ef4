package trestle.review;

import trestle.launch.Launch;
import trestle.launch.Turn;

/**
 * How the aircraft gets away.
 *
 * @param launch the launch
 * @param motorDelayS time from release until the motor pulls, s
 * @param turn the turn to report on
 */
public record LaunchPlan(Launch launch, double motorDelayS, Turn turn) {}
