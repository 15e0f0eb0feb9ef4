package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judge;
import trestle.finding.Subject;

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
        Centre centre = BuildUp.centre(task.items());
        Optional<Planform> planform = task.wing().map(Planform::of);
        Optional<NeutralPoint> neutralPoint =
                planform.flatMap(wing -> task.tail().flatMap(t -> NeutralPoint.of(wing, t)));
        Optional<Weighed> weighed = task.weighing().flatMap(w -> Scales.read(w, centre));
        List<Standing> standings = standings(task.items(), centre, weighed);
        Judge judge = new Judge();
        BalanceAssumptions.of(task, neutralPoint, judge);
        WeighingChecks.judge(task.weighing(), weighed, centre, judge);
        boolean lopsided =
                task.items().stream().anyMatch(item -> item.lateralM().orElse(0) != 0);
        LimitChecks.judge(task.limits(), planform, standings, neutralPoint.isPresent(), lopsided, judge);
        StabilityChecks.judge(planform, task.tail(), neutralPoint, standings, judge);
        OptionalDouble targetM = targetM(task, planform, neutralPoint, centre, judge);
        Optional<Aim> aim = targetM.isPresent()
                ? Optional.of(Corrections.towards(task.items(), centre, targetM.getAsDouble()))
                : Optional.empty();
        TargetChecks.judge(task, aim, centre, judge);
        return new Balance(
                centre,
                BuildUp.moments(task.items(), centre.massKg()),
                BuildUp.inertia(task.items(), centre),
                planform,
                on(planform.map(wing -> wing.macFraction(centre.armM()))),
                on(planform.map(wing -> centre.massKg() / wing.areaM2())),
                neutralPoint,
                on(neutralPoint.map(point ->
                        (point.armM() - centre.armM()) / planform.orElseThrow().meanAerodynamicChordM())),
                weighed,
                aim,
                judge.judgement());
    }

    private static List<Standing> standings(List<Item> items, Centre centre, Optional<Weighed> weighed) {
        List<Standing> standings = new ArrayList<>();
        standings.add(
                Standing.of(centre, items.stream().anyMatch(i -> i.lateralM().isPresent())));
        weighed.ifPresent(scales -> standings.add(Standing.of(scales)));
        return standings;
    }

    /**
     * The target's arm. Where none is asked for and the CG is not well inside its limits, the
     * middle between them.
     */
    private static OptionalDouble targetM(
            BalanceTask task,
            Optional<Planform> planform,
            Optional<NeutralPoint> neutralPoint,
            Centre centre,
            Judge judge) {
        if (task.target().isPresent()) {
            return task.target().get().armM(planform, neutralPoint);
        }
        OptionalDouble forwardM = LimitChecks.place(task.limits().flatMap(Limits::forward), planform);
        OptionalDouble aftM = LimitChecks.place(task.limits().flatMap(Limits::aft), planform);
        if (forwardM.isEmpty()
                || aftM.isEmpty()
                || forwardM.getAsDouble() > aftM.getAsDouble()
                || wellInside(centre, forwardM.getAsDouble(), aftM.getAsDouble())) {
            return OptionalDouble.empty();
        }
        judge.assume(
                Subject.of(BalancePart.TARGET),
                "the target is midway between the forward and the aft limit",
                "the CG is not safely inside its limits and no target is given");
        return OptionalDouble.of((forwardM.getAsDouble() + aftM.getAsDouble()) / 2);
    }

    private static boolean wellInside(Centre centre, double forwardM, double aftM) {
        return centre.armM() - forwardM >= centre.armToleranceM() - ROUNDING_M
                && aftM - centre.armM() >= centre.armToleranceM() - ROUNDING_M;
    }

    private static OptionalDouble on(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
