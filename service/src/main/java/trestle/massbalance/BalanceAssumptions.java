package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.units.Share;

/** What was assumed on the way. */
final class BalanceAssumptions {
    private BalanceAssumptions() {}

    static void of(BalanceTask task, Optional<NeutralPoint> neutralPoint, Judge judge) {
        List<Item> items = task.items();
        unknown(items, items.stream().filter(i -> i.lateralM().isEmpty()).count(), "lateral", judge);
        unknown(items, items.stream().filter(i -> i.verticalM().isEmpty()).count(), "vertical", judge);
        tolerance(items, judge);
        judge.assume(
                Subject.of(BalancePart.ITEMS),
                "each item is a point",
                "sizes of items are not given, so the moments of inertia are lower bounds");
        if (task.wing().isPresent() && hasDihedral(task.wing().get())) {
            judge.assume(
                    Subject.of(BalancePart.PANELS),
                    "area, span and mean chord are those seen from above",
                    "dihedral shortens a panel's span by its cosine");
        }
        neutralPoint.ifPresent(point -> stability(point, task.tail().orElseThrow(), judge));
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

    private static boolean hasDihedral(Wing wing) {
        return wing.panels().stream().anyMatch(panel -> panel.dihedralRad() != 0);
    }

    private static void stability(NeutralPoint point, TailArrangement tail, Judge judge) {
        judge.assume(
                Subject.of(BalancePart.WING),
                Judge.text(
                        "sections have %.0f %% of the ideal lift slope",
                        Share.percentFromFraction(LiftSlope.SECTION_SLOPE_RATIO)),
                "no section data are given; common practice, no source");
        judge.assume(
                Subject.of(BalancePart.TAIL),
                "the neutral point is an estimate to about 5 % of the mean chord, controls fixed",
                "fuselage, propeller and wake are not computed; common practice, no source");
        judge.assume(
                Subject.of(BalancePart.FUSELAGE_SHIFT),
                Judge.text(
                        "fuselage and propeller move the neutral point by %.1f %% of the mean chord",
                        Share.percentFromFraction(tail.fuselageShiftFraction())),
                "they are not computed from their shapes");
        if (point.tailVolumeRatio() > 0) {
            judge.assume(
                    Subject.of(BalancePart.TAIL),
                    "the tail is unswept and flies in the downwash far behind an elliptically loaded wing",
                    "its sweep and height are not given");
        }
    }
}
