package trestle.figure;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.massbalance.Aim;
import trestle.massbalance.Balance;
import trestle.massbalance.BalanceTask;
import trestle.massbalance.Limits;
import trestle.massbalance.NeutralPoint;
import trestle.massbalance.Planform;
import trestle.massbalance.Station;
import trestle.massbalance.Tail;

/**
 * Places along the fuselage beside the items and the CG, m aft of the datum.
 *
 * @param forward forward limit of the CG
 * @param aft aft limit of the CG
 * @param target where the CG should be
 * @param neutralPoint the neutral point
 * @param planform the wing
 * @param tail the tail
 */
record Landmarks(
        OptionalDouble forward,
        OptionalDouble aft,
        OptionalDouble target,
        OptionalDouble neutralPoint,
        Optional<Planform> planform,
        Optional<Tail> tail) {

    static Landmarks of(BalanceTask task, Balance balance) {
        return new Landmarks(
                place(task.limits().flatMap(Limits::forward), balance.planform()),
                place(task.limits().flatMap(Limits::aft), balance.planform()),
                boxed(balance.aim().map(Aim::targetArmM)),
                boxed(balance.neutralPoint().map(NeutralPoint::armM)),
                balance.planform(),
                task.tail().filter(Tail.class::isInstance).map(Tail.class::cast));
    }

    /** Shades where the CG may be. */
    void shadeAllowed(Plot plot) {
        boolean limited = forward.isPresent() || aft.isPresent();
        double from = forward.orElse(Double.NEGATIVE_INFINITY);
        double to = aft.orElse(Double.POSITIVE_INFINITY);
        if (limited && from < to) {
            plot.bandUp(Style.GOOD_BAND, from, to);
        }
    }

    /** Shades where the CG may be, and where it may not. */
    void shade(Plot plot) {
        double from = forward.orElse(Double.NEGATIVE_INFINITY);
        double to = aft.orElse(Double.POSITIVE_INFINITY);
        if (forward.isEmpty() && aft.isEmpty()) {
            return;
        }
        if (from > to) {
            plot.bandUp(Style.LIMIT_BAND, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            return;
        }
        plot.bandUp(Style.LIMIT_BAND, Double.NEGATIVE_INFINITY, from);
        plot.bandUp(Style.GOOD_BAND, from, to);
        plot.bandUp(Style.LIMIT_BAND, to, Double.POSITIVE_INFINITY);
    }

    private static OptionalDouble place(Optional<Station> station, Optional<Planform> planform) {
        return station.isPresent() ? station.get().armM(planform, Optional.empty()) : OptionalDouble.empty();
    }

    private static OptionalDouble boxed(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
