package trestle.massbalance;

import java.util.List;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Length;
import trestle.units.Share;

/** What was assumed on the way. */
final class BalanceAssumptions {
    private BalanceAssumptions() {}

    static void of(Situation found, Judge judge) {
        BalanceTask task = found.task();
        List<Item> items = task.items();
        unknown(items, items.stream().filter(i -> i.lateralM().isEmpty()).count(), "lateral", judge);
        unknown(items, items.stream().filter(i -> i.verticalM().isEmpty()).count(), "vertical", judge);
        tolerance(items, judge);
        inertia(items, judge);
        if (task.wing().isPresent() && hasDihedral(task.wing().get())) {
            judge.assume(
                    Subject.of(BalancePart.PANELS),
                    "area, span and mean aerodynamic chord are those seen from above",
                    "dihedral shortens a panel's span by its cosine");
        }
        found.neutralPoint().ifPresent(point -> stability(point, task, judge));
    }

    private static void unknown(List<Item> items, long count, String place, Judge judge) {
        if (count > 0) {
            judge.assume(
                    Subject.of(BalancePart.ITEMS),
                    Judge.text("%d of %d items stand at a %s place of 0 mm", count, items.size(), place),
                    "no " + place + " place is given for them");
        }
    }

    private static void tolerance(List<Item> items, Judge judge) {
        boolean exact = items.stream().allMatch(i -> i.massToleranceKg() == 0 && i.armToleranceM() == 0);
        judge.assume(
                Subject.of(BalancePart.ITEMS),
                exact
                        ? "masses and arms are exact"
                        : "a tolerance is a bound of two standard deviations, items independent",
                exact ? "no item has a tolerance" : "independent errors add by root sum of squares");
    }

    private static void inertia(List<Item> items, Judge judge) {
        Subject subject = Subject.of(BalancePart.ITEMS);
        if (items.stream().noneMatch(i -> i.spread().orElse(null) instanceof Spread.OverWing)) {
            judge.assume(
                    subject,
                    "moments of inertia are left out",
                    "no item says that it is spread over the wing, and points leave out most of the roll inertia");
            return;
        }
        long points = items.stream().filter(i -> i.spread().isEmpty()).count();
        if (points > 0) {
            judge.assume(
                    subject,
                    Judge.text("%d of %d items are points", points, items.size()),
                    "their spread is not given, so the moments of inertia are lower bounds");
        }
        judge.assume(
                subject,
                "a spread item's own inertia is good to ± 30 %",
                "spars and servos are not where the chord is; judgement, no source");
    }

    private static boolean hasDihedral(Wing wing) {
        return wing.panels().stream().anyMatch(panel -> panel.dihedralRad() != 0);
    }

    private static void stability(NeutralPoint point, BalanceTask task, Judge judge) {
        judge.assume(
                Subject.of(BalancePart.WING),
                Judge.text(
                        "sections have %.0f %% of the ideal lift slope",
                        Share.percentFromFraction(LiftSlope.SECTION_SLOPE_RATIO)),
                "no section data are given; common practice, no source");
        if (!(task.tail().orElseThrow() instanceof Tail tail)) {
            judge.assume(
                    Subject.of(BalancePart.WING),
                    "the neutral point is good to ± 1.5 % of the mean aerodynamic chord, controls fixed",
                    "what fuselage and propeller may be off by; judgement, no source");
            return;
        }
        judge.assume(
                Subject.of(BalancePart.TAIL),
                Judge.text(
                        "the neutral point is good to ± %.0f mm, controls fixed", Length.mmFromM(point.toleranceM())),
                "tail efficiency ± 0.1, downwash ± 0.05, lift slopes ± 5 %, fuselage and propeller ± 1.5 % of the mean"
                        + " aerodynamic chord, independent; judgement, no source");
        height(task.wing().orElseThrow(), tail, judge);
        if (tail.dihedralRad().isEmpty()) {
            judge.assume(
                    Subject.of(BalancePart.TAIL_DIHEDRAL),
                    "the tail is flat",
                    "no dihedral is given; a V-tail acts in pitch with less than its projection");
        }
    }

    private static void height(Wing wing, Tail tail, Judge judge) {
        Subject subject = Subject.of(BalancePart.TAIL_HEIGHT);
        if (wing.rootVerticalM().isEmpty() || tail.verticalM().isEmpty()) {
            judge.assume(
                    subject,
                    "the tail is unswept and meets the whole downwash of an elliptically loaded wing",
                    "its height or that of the wing's root is not given");
            return;
        }
        double share = Math.abs(wing.heightOfM(tail)) / Planform.of(wing).spanM();
        judge.assume(
                subject,
                "the downwash falls off with the tail's height as fitted to our own vortex lattice",
                share <= LiftSlope.HIGHEST_FITTED_RATIO
                        ? "no other published law was at hand"
                        : "the tail stands higher than the lattice was run for; no other published law was at hand");
    }
}
