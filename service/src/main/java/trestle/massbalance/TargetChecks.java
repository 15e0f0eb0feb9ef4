package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;

/** The checks of the CG against its target, and of what can be moved against where it stands. */
final class TargetChecks {
    private static final int MOST_NAMED = 3;

    private final Situation found;
    private final Optional<Aim> aim;
    private final String remedy;

    private TargetChecks(Situation found, Optional<Aim> aim, String remedy) {
        this.found = found;
        this.aim = aim;
        this.remedy = remedy;
    }

    static void judge(Situation found, Optional<Aim> aim, String remedy, Judge judge) {
        TargetChecks checks = new TargetChecks(found, aim, remedy);
        judge.check("cg-target", "CG against its target", found.target(), checks::target);
        List<Integer> outside = outside(found.task().items());
        Subject place =
                Subject.of(BalancePart.ITEM_TRAVEL, outside.stream().findFirst().orElse(0));
        judge.check("item-travel", "movable items inside their travel", place, trial -> checks.travel(trial, outside));
    }

    private void target(Trial trial) {
        if (aim.isEmpty() || found.task().target().isEmpty()) {
            trial.notJudged(found.target());
            return;
        }
        Centre centre = found.centre();
        double targetM = aim.get().targetArmM();
        double offM = centre.armM() - targetM;
        boolean off = Math.abs(offM) > centre.armToleranceM() + MassBalance.ROUNDING_M;
        String where = Judge.text(
                "The CG at %s mm is %s %s of the target at %s mm",
                Said.mm(centre.armM(), targetM), Said.distance(offM), Said.way(offM), Said.mm(targetM, centre.armM()));
        trial.place(Length.mmFromM(centre.armM()), "mm")
                .atMost(Length.mmFromM(targetM), Basis.REQUEST)
                .asSaid(off && (found.nearOrOutsideRange() || found.marginOff()), Severity.ATTENTION)
                .attentionIf(
                        off && aim.get().together().isPresent() && !aim.get().reachable(),
                        "target-out-of-reach",
                        "%s%s.",
                        where,
                        remedy)
                .noteIf(off, "cg-off-target", "%s%s.", where, remedy);
    }

    /** The first that stands outside its travel, else the first that can be moved, else the list. */
    private static Subject travelling(List<Item> items, List<Integer> outside) {
        return IntStream.concat(
                        outside.stream().mapToInt(Integer::intValue),
                        IntStream.range(0, items.size())
                                .filter(i -> items.get(i).travel().isPresent()))
                .mapToObj(i -> Subject.of(BalancePart.ITEM_TRAVEL, i))
                .findFirst()
                .orElse(Subject.of(BalancePart.ITEMS));
    }

    private static List<Integer> outside(List<Item> items) {
        return IntStream.range(0, items.size())
                .filter(i -> items.get(i)
                        .travel()
                        .filter(t -> !t.reaches(items.get(i).armM()))
                        .isPresent())
                .boxed()
                .toList();
    }

    private void travel(Trial trial, List<Integer> outside) {
        List<Item> items = found.task().items();
        if (items.stream().noneMatch(item -> item.travel().isPresent())) {
            trial.notJudged(Subject.of(BalancePart.ITEMS));
            return;
        }
        String named = outside.stream()
                .limit(MOST_NAMED)
                .map(items::get)
                .map(item -> Judge.text(
                        "%s at %.0f mm (%.0f to %.0f mm)",
                        item.name(),
                        Length.mmFromM(item.armM()),
                        Length.mmFromM(item.travel().orElseThrow().fromM()),
                        Length.mmFromM(item.travel().orElseThrow().toM())))
                .collect(Collectors.joining(", "));
        int more = outside.size() - MOST_NAMED;
        trial.attentionIf(
                !outside.isEmpty(),
                "item-outside-its-travel",
                "Outside the travel that it can be moved in: %s%s; correct its arm or its travel.",
                named,
                more > 0 ? Judge.text(" and %d more", more) : "");
    }
}
