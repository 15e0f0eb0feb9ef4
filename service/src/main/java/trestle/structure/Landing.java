package trestle.structure;

import java.util.OptionalDouble;

/**
 * A landing on skid, belly or gear.
 *
 * @param sinkMPerS m/s; absent for that of the rule
 * @param touchdownMPerS m/s; absent where not known
 * @param stoppingM way over which the sink is taken up, m
 * @param efficiency of what takes it up
 * @param liftFraction share of the weight that the wing still bears
 * @param slideM way of the slide, m; absent where not known
 */
public record Landing(
        OptionalDouble sinkMPerS,
        OptionalDouble touchdownMPerS,
        double stoppingM,
        double efficiency,
        double liftFraction,
        OptionalDouble slideM) {}
