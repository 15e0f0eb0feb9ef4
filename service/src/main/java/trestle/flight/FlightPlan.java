package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Flies planned legs on a store and holds what they take against what there is. */
final class FlightPlan {
    /** The reserve is counted by flying on after the legs; twice the full time is never reached. */
    private static final double LONGER_THAN_ANY_RESERVE = 2;

    /**
     * Slack in the comparison of sums of energies, so that an exact plan is not one joule short.
     */
    private static final double ROUNDING = 1e-9;

    /** The moment at which a store ended is approached from before, so that it still gives something. */
    private static final double JUST_BEFORE = 0.999;

    private FlightPlan() {}

    /**
     * Where the energy goes.
     *
     * @param planned the legs
     * @param store what feeds them
     * @param bestEnduranceW pack power of best endurance, W: the power at which what is left after
     *     the legs is counted
     * @param reserveFraction share kept
     * @return the budget
     */
    static EnergyBudget fly(
            List<PlannedLeg> planned, EnergyStore store, double bestEnduranceW, double reserveFraction) {
        int flyable = 0;
        while (flyable < planned.size() && planned.get(flyable).flyable()) {
            flyable++;
        }
        List<Step> steps = new ArrayList<>();
        for (PlannedLeg leg : planned.subList(0, flyable)) {
            steps.add(new Step(leg.powerW(), leg.durationS()));
        }
        double wholeS = store.constantPower(bestEnduranceW).durationS();
        steps.add(new Step(bestEnduranceW, Math.max(1, LONGER_THAN_ANY_RESERVE * wholeS)));
        Plan plan = store.fly(steps);

        double availableJ =
                plan.steps().stream().mapToDouble(FlownStep::energyJ).sum();
        double plannedJ = planned.stream().mapToDouble(PlannedLeg::energyJ).sum();
        double reserveJ = reserveFraction * availableJ;
        boolean allFlown = plan.steps().size() > flyable;
        double leftJ = allFlown ? plan.steps().get(flyable).energyJ() : 0;
        return new EnergyBudget(
                availableJ,
                reserveJ,
                plannedJ,
                leftJ,
                results(planned, flyable, plan),
                shortfall(planned.subList(0, flyable), plan, availableJ - reserveJ, left(store, steps, plan)));
    }

    /** What a store that ended within the plan would still give at the last of the steps' powers. */
    private static DoubleSupplier left(EnergyStore store, List<Step> steps, Plan plan) {
        return () -> {
            int ended = plan.steps().size() - 1;
            FlownStep last = plan.steps().get(ended);
            List<Step> again = new ArrayList<>(steps.subList(0, ended));
            if (last.endS() > last.startS()) {
                again.add(new Step(steps.get(ended).powerW(), JUST_BEFORE * (last.endS() - last.startS())));
            }
            again.add(steps.get(steps.size() - 1));
            Plan then = store.fly(again);
            return then.steps().size() == again.size()
                    ? then.steps().get(again.size() - 1).energyJ()
                    : 0;
        };
    }

    private static List<LegResult> results(List<PlannedLeg> planned, int flyable, Plan plan) {
        List<LegResult> results = new ArrayList<>();
        int begun = Math.min(flyable, plan.steps().size());
        boolean allFlown = plan.steps().size() > flyable;
        double endS = 0;
        for (int i = 0; i < planned.size(); i++) {
            PlannedLeg leg = planned.get(i);
            if (i < begun) {
                boolean last = i == begun - 1 && !allFlown;
                LegStatus status = last ? LegStatus.RAN_OUT : LegStatus.FLOWN;
                results.add(leg.flown(plan.steps().get(i), status));
                endS = plan.steps().get(i).endS();
            } else {
                boolean refused = i == flyable && allFlown;
                results.add(leg.notFlown(endS, refused ? LegStatus.NOT_FLYABLE : LegStatus.NOT_REACHED));
            }
        }
        return results;
    }

    private static Optional<Shortfall> shortfall(
            List<PlannedLeg> legs, Plan plan, double spendableJ, DoubleSupplier leftJ) {
        double neededJ = legs.stream().mapToDouble(PlannedLeg::energyJ).sum();
        boolean ended = plan.steps().size() <= legs.size() && plan.end().isPresent();
        if (ended) {
            int index = plan.steps().size() - 1;
            FlownStep last = plan.steps().get(index);
            return Optional.of(new Shortfall(
                    index,
                    last.endS(),
                    Math.max(0, neededJ - spendableJ),
                    plan.end(),
                    last.lowestVoltageV(),
                    leftJ.getAsDouble()));
        }
        if (neededJ <= spendableJ * (1 + ROUNDING)) {
            return Optional.empty();
        }
        double beforeJ = 0;
        double startS = 0;
        int i = 0;
        while (beforeJ + legs.get(i).energyJ() <= spendableJ) {
            beforeJ += legs.get(i).energyJ();
            startS += legs.get(i).durationS();
            i++;
        }
        return Optional.of(new Shortfall(
                i,
                startS + (spendableJ - beforeJ) / legs.get(i).powerW(),
                neededJ - spendableJ,
                Optional.empty(),
                plan.steps().get(i).lowestVoltageV(),
                0));
    }
}
