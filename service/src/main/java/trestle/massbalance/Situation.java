package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Subject;

/**
 * What mass and balance came to, before it is judged.
 *
 * @param task what was asked
 * @param list mass and CG of the list of items
 * @param weighed what the scales say; empty without a weighing or with one that cannot be used
 * @param centre mass and CG of what flies: the scales' as far as they tell, else the list's
 * @param planform the wing from above; empty without a wing
 * @param neutralPoint the neutral point; empty without a wing and a known tail behind it
 */
record Situation(
        BalanceTask task,
        Centre list,
        Optional<Weighed> weighed,
        Centre centre,
        Optional<Planform> planform,
        Optional<NeutralPoint> neutralPoint) {

    static Situation of(BalanceTask task) {
        Centre list = BuildUp.centre(task.items());
        Optional<Weighed> weighed = task.weighing().flatMap(w -> Scales.read(w, list));
        Optional<NeutralPoint> neutralPoint =
                task.wing().flatMap(wing -> task.tail().flatMap(t -> NeutralPoint.of(wing, t, task.fuselage())));
        Centre centre = weighed.map(scales -> scales.over(list)).orElse(list);
        return new Situation(task, list, weighed, centre, task.wing().map(Planform::of), neutralPoint);
    }

    /** Maximum take-off mass, kg; empty for none. */
    OptionalDouble maximumTakeoffMassKg() {
        return task.limits().map(Limits::maximumTakeoffMassKg).orElse(OptionalDouble.empty());
    }

    /** Forward limit of the CG, m; empty where there is none, or no wing to place it on. */
    OptionalDouble forwardM() {
        return place(task.limits().flatMap(Limits::forward));
    }

    /** Aft limit of the CG, m; empty where there is none, or no wing to place it on. */
    OptionalDouble aftM() {
        return place(task.limits().flatMap(Limits::aft));
    }

    private OptionalDouble place(Optional<Station> limit) {
        return limit.isPresent() ? limit.get().armM(planform, Optional.empty()) : OptionalDouble.empty();
    }

    /** Where the forward limit stands, or could stand. */
    Subject forwardLimit() {
        return limit(task.limits().flatMap(Limits::forward), BalancePart.FORWARD_LIMIT, BalancePart.FORWARD_LIMIT_MAC);
    }

    /** Where the aft limit stands, or could stand. */
    Subject aftLimit() {
        return limit(task.limits().flatMap(Limits::aft), BalancePart.AFT_LIMIT, BalancePart.AFT_LIMIT_MAC);
    }

    private static Subject limit(Optional<Station> station, BalancePart arm, BalancePart mac) {
        return Subject.of(station.orElse(null) instanceof Station.AtMacFraction ? mac : arm);
    }

    /** Where the target stands, or could stand. */
    Subject target() {
        Target target = task.target().orElse(null);
        if (target instanceof Target.StaticMargin) {
            return Subject.of(BalancePart.TARGET_MARGIN);
        }
        return Subject.of(target instanceof Station.AtMacFraction ? BalancePart.TARGET_MAC : BalancePart.TARGET);
    }

    /** Lateral limit of the CG, m; empty for none. */
    OptionalDouble lateralLimitM() {
        return task.limits().map(Limits::lateralM).orElse(OptionalDouble.empty());
    }

    /** Whether both ends of the range are known, the right way round. */
    boolean hasRange() {
        return forwardM().isPresent() && aftM().isPresent() && forwardM().getAsDouble() <= aftM().getAsDouble();
    }

    /** Whether some place off the plane of symmetry is known: an item's, or that of three scales. */
    boolean tellsLateral() {
        return task.items().stream().anyMatch(item -> item.lateralM().isPresent())
                || weighed.map(Weighed::lateralM)
                        .filter(OptionalDouble::isPresent)
                        .isPresent();
    }

    /** Whether an item stands off the plane of symmetry. */
    boolean lopsided() {
        return task.items().stream().anyMatch(item -> item.lateralM().orElse(0) != 0);
    }

    /** By how much the CG lies inside the nearer end of its range, m; empty without any end. */
    OptionalDouble insideRangeM() {
        double inside = Math.min(
                forwardM().isPresent() ? centre.armM() - forwardM().getAsDouble() : Double.POSITIVE_INFINITY,
                aftM().isPresent() ? aftM().getAsDouble() - centre.armM() : Double.POSITIVE_INFINITY);
        return Double.isInfinite(inside) ? OptionalDouble.empty() : OptionalDouble.of(inside);
    }

    /** Whether the CG is not inside its range by as much as its tolerance. */
    boolean nearOrOutsideRange() {
        OptionalDouble inside = insideRangeM();
        return inside.isPresent() && inside.getAsDouble() < centre.armToleranceM() - MassBalance.ROUNDING_M;
    }

    /** The static margin as a fraction of the mean chord; empty without a neutral point. */
    OptionalDouble marginFraction() {
        if (neutralPoint.isEmpty()) {
            return OptionalDouble.empty();
        }
        double aheadM = neutralPoint.get().armM() - centre.armM();
        return OptionalDouble.of(aheadM / planform.orElseThrow().meanAerodynamicChordM());
    }

    /** What the static margin may be off by; empty without a neutral point. */
    OptionalDouble marginToleranceFraction() {
        if (neutralPoint.isEmpty()) {
            return OptionalDouble.empty();
        }
        double offM = Math.hypot(neutralPoint.get().toleranceM(), centre.armToleranceM());
        return OptionalDouble.of(offM / planform.orElseThrow().meanAerodynamicChordM());
    }

    /** Whether the static margin is outside what flies well. */
    boolean marginOff() {
        OptionalDouble margin = marginFraction();
        return margin.isPresent()
                && (margin.getAsDouble() < StabilityChecks.LEAST_MARGIN_FRACTION
                        || margin.getAsDouble() > StabilityChecks.GREATEST_MARGIN_FRACTION);
    }

    /** Where the CG lies in the mean chord; empty without a wing. */
    OptionalDouble cgMacFraction() {
        return planform.isPresent()
                ? OptionalDouble.of(planform.get().macFraction(centre.armM()))
                : OptionalDouble.empty();
    }

    /** Whether the CG lies so far from the wing that an arm must be wrong. */
    boolean offTheWing() {
        OptionalDouble mac = cgMacFraction();
        return mac.isPresent()
                && (mac.getAsDouble() < -StabilityChecks.FAR_FROM_CHORD
                        || mac.getAsDouble() > 1 + StabilityChecks.FAR_FROM_CHORD);
    }
}
