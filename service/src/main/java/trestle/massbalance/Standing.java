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
 * @param arm CG, m; empty where not known
 * @param armToleranceM its tolerance, m
 * @param lateral lateral CG, m; empty where not known
 * @param lateralToleranceM its tolerance, m
 * @param source what a finding is about, in place of the limit; empty for the limit itself
 */
record Standing(
        String called,
        double massKg,
        double massToleranceKg,
        Optional<Double> arm,
        double armToleranceM,
        Optional<Double> lateral,
        double lateralToleranceM,
        Optional<Subject> source) {

    static Standing of(Centre list, boolean lateralKnown) {
        return new Standing(
                "The",
                list.massKg(),
                list.massToleranceKg(),
                Optional.of(list.armM()),
                list.armToleranceM(),
                lateralKnown ? Optional.of(list.lateralM()) : Optional.empty(),
                list.lateralToleranceM(),
                Optional.empty());
    }

    static Standing of(Weighed weighed) {
        return new Standing(
                "The weighed",
                weighed.massKg(),
                weighed.massToleranceKg(),
                boxed(weighed.armM()),
                weighed.armToleranceM(),
                boxed(weighed.lateralM()),
                weighed.lateralToleranceM(),
                Optional.of(Subject.of(BalancePart.WEIGHING)));
    }

    Subject about(BalancePart limit) {
        return source.orElseGet(() -> Subject.of(limit));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
