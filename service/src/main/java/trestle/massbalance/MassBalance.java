package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judge;

/** Mass and balance of an aircraft, from its list of items and what else is known of it. */
public final class MassBalance {
    /** Sums of doubles over a few metres err far less: a CG this near to a limit is at it, m. */
    static final double ROUNDING_M = 1e-9;

    /** The same for masses, kg. */
    static final double ROUNDING_KG = 1e-9;

    private MassBalance() {}

    /**
     * Adds up the aircraft, judges it, and says what would bring the CG to the target.
     *
     * @param task the aircraft
     * @return its balance
     */
    public static Balance of(BalanceTask task) {
        Situation found = Situation.of(task);
        Judge judge = new Judge();
        BalanceAssumptions.of(found, judge);
        OptionalDouble targetM = Aiming.targetM(found, judge);
        Optional<Tail> tail = task.tail().filter(Tail.class::isInstance).map(Tail.class::cast);
        Optional<Aim> aim = targetM.isPresent()
                ? Optional.of(Corrections.towards(task.items(), tail, found.centre(), targetM.getAsDouble()))
                : Optional.empty();
        String remedy = Remedy.of(aim, found.maximumTakeoffMassKg());
        PlausibilityChecks.judge(found, judge);
        WeighingChecks.judge(found, judge);
        LimitChecks.judge(found, remedy, judge);
        // One cause, one finding: what a CG outside its range asks for is said there.
        StabilityChecks.judge(found, found.nearOrOutsideRange() ? "" : remedy, judge);
        TargetChecks.judge(found, aim, remedy, judge);
        Optional<Inertia> inertia = BuildUp.inertia(task, found.list());
        PlausibilityChecks.rollInertia(inertia, found, judge);
        return new Balance(
                found.centre(),
                found.list(),
                BuildUp.moments(task.items(), found.list().massKg()),
                inertia,
                found.planform(),
                found.cgMacFraction(),
                on(found.planform().map(wing -> found.centre().massKg() / wing.areaM2())),
                found.neutralPoint(),
                found.marginFraction(),
                found.marginToleranceFraction(),
                found.weighed(),
                aim,
                judge.judgement());
    }

    private static OptionalDouble on(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
