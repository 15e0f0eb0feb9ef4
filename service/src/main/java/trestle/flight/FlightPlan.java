package trestle.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Flies planned legs on a store and holds what they take against what there is. */
final class FlightPlan {
    /** The reserve is counted by flying on after the legs; twice the full time is never reached. */
    private static final double LONGER_THAN_ANY_RESERVE = 2;

    /**
     * Slack in the comparison of sums of energies, so that an exact plan is not one joule short.
     */
    private static final double ROUNDING = 1e-9;

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
                shortfall(planned, flyable, plan, availableJ - reserveJ));
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

    private static Optional<Shortfall> shortfall(List<PlannedLeg> planned, int flyable, Plan plan, double spendableJ) {
        double neededJ = 0;
        for (int i = 0; i < flyable; i++) {
            neededJ += planned.get(i).energyJ();
        }
        if (neededJ <= spendableJ * (1 + ROUNDING)) {
            return Optional.empty();
        }
        double beforeJ = 0;
        double startS = 0;
        int i = 0;
        while (beforeJ + planned.get(i).energyJ() <= spendableJ) {
            beforeJ += planned.get(i).energyJ();
            startS += planned.get(i).durationS();
            i++;
        }
        return Optional.of(new Shortfall(
                i,
                startS + (spendableJ - beforeJ) / planned.get(i).powerW(),
                neededJ - spendableJ,
                plan.steps().size() > flyable ? Optional.empty() : plan.end()));
    }
}
