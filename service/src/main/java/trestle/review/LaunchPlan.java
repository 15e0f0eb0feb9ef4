package trestle.review;

import java.util.function.DoubleFunction;
import trestle.launch.Launch;
import trestle.launch.Turn;

/**
 * How the aircraft gets away.
 *
 * @param launch the launch, given the stall speed in m/s that its own speeds may rest on
 * @param motorDelayS time from release until the motor pulls, s
 * @param turn the turn to report on
 */
public record LaunchPlan(DoubleFunction<Launch> launch, double motorDelayS, Turn turn) {}
