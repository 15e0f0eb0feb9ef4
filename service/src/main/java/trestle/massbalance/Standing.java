package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Subject;

/**
 * A mass and CG that limits are held against, from the list or from the scales.
 *
 * @param called how a message names it
 * @param massKg mass, kg
 * @param massToleranceKg its tolerance, kg
 * @param armM CG, m; empty where not known
 * @param armToleranceM its tolerance, m
 * @param lateralM lateral CG, m; empty where not known
 * @param lateralToleranceM its tolerance, m
 * @param source what a finding is about, in place of the limit; empty for the limit itself
 */
record Standing(
        String called,
        double massKg,
        double massToleranceKg,
        OptionalDouble armM,
        double armToleranceM,
        OptionalDouble lateralM,
        double lateralToleranceM,
        Optional<Subject> source) {

    static Standing of(Centre list) {
        return new Standing(
                "The",
                list.massKg(),
                list.massToleranceKg(),
                OptionalDouble.of(list.armM()),
                list.armToleranceM(),
                OptionalDouble.of(list.lateralM()),
                list.lateralToleranceM(),
                Optional.empty());
    }

    static Standing of(Weighed weighed) {
        return new Standing(
                "The weighed",
                weighed.massKg(),
                weighed.massToleranceKg(),
                weighed.armM(),
                weighed.armToleranceM(),
                weighed.lateralM(),
                weighed.lateralToleranceM(),
                Optional.of(Subject.of(BalancePart.WEIGHING)));
    }

    Subject about(BalancePart limit) {
        return source.orElseGet(() -> Subject.of(limit));
    }
}
