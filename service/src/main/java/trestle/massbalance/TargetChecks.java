package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Mass;

/** The checks of the CG against its target, and whether what can be moved gets it there. */
final class TargetChecks {
    private static final Subject TARGET = Subject.of(BalancePart.TARGET);

    private final Optional<Target> target;
    private final Optional<Aim> aim;
    private final List<Item> items;
    private final Centre centre;

    private TargetChecks(Optional<Target> target, Optional<Aim> aim, List<Item> items, Centre centre) {
        this.target = target;
        this.aim = aim;
        this.items = items;
        this.centre = centre;
    }

    static void judge(BalanceTask task, Optional<Aim> aim, Centre centre, Judge judge) {
        TargetChecks checks = new TargetChecks(task.target(), aim, task.items(), centre);
        judge.check("cg-target", "CG against its target", TARGET, checks::target);
        for (int i = 0; i < task.items().size(); i++) {
            int index = i;
            if (aim.isPresent() && task.items().get(i).travel().isPresent()) {
                judge.check(
                        "item-in-travel",
                        "place of " + task.items().get(i).name() + " in its travel",
                        Subject.of(BalancePart.ITEM_TRAVEL, i),
                        trial -> checks.travel(trial, index));
            }
        }
        OptionalDouble most = task.limits().map(Limits::maximumTakeoffMassKg).orElse(OptionalDouble.empty());
        judge.check(
                "mass-with-ballast",
                "take-off mass with the least ballast",
                Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS),
                trial -> checks.ballast(trial, most));
    }

    private void target(Trial trial) {
        if (aim.isEmpty()) {
            trial.attentionIf(
                            target.isPresent(),
                            "target-needs-neutral-point",
                            "A target in static margin needs a neutral point: give the wing and a tail behind it.")
                    .notJudged(TARGET);
            return;
        }
        double offM = centre.armM() - aim.get().targetArmM();
        double cgMm = Length.mmFromM(centre.armM());
        double targetMm = Length.mmFromM(aim.get().targetArmM());
        Optional<JointMove> together = aim.get().together();
        String where = Judge.text(
                "The CG at %.1f mm is %.1f mm %s the target at %.1f mm",
                cgMm, Math.abs(Length.mmFromM(offM)), offM > 0 ? "behind" : "ahead of", targetMm);
        boolean off = Math.abs(offM) > centre.armToleranceM() + MassBalance.ROUNDING_M;
        trial.of(cgMm, "mm")
                .atMost(targetMm, target.isPresent() ? Basis.REQUEST : Basis.COMPUTED)
                .attentionIf(
                        off && together.isPresent() && !aim.get().reachable(),
                        "target-out-of-reach",
                        "%s, and moving all that is movable brings it only to %.1f mm.",
                        where,
                        together.map(JointMove::cgArmM).map(Length::mmFromM).orElse(cgMm))
                .noteIf(
                        off,
                        "cg-off-target",
                        "%s%s",
                        where,
                        together.isEmpty() ? " and no item is movable." : "; what is movable can bring it there.");
    }

    private void travel(Trial trial, int index) {
        Item item = items.get(index);
        Travel travel = item.travel().orElseThrow();
        trial.attentionIf(
                !travel.reaches(item.armM()),
                "item-outside-its-travel",
                "The item %s stands at %.0f mm, outside the %.0f to %.0f mm that it can be moved in.",
                item.name(),
                Length.mmFromM(item.armM()),
                Length.mmFromM(travel.fromM()),
                Length.mmFromM(travel.toM()));
    }

    private void ballast(Trial trial, OptionalDouble most) {
        if (aim.isEmpty() || aim.get().ballast().isEmpty() || most.isEmpty()) {
            trial.notJudged(most.isEmpty() ? Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS) : TARGET);
            return;
        }
        double leastKg = aim.get().ballast().stream()
                .mapToDouble(Ballast::totalMassKg)
                .min()
                .orElseThrow();
        double limitG = Mass.gFromKg(most.getAsDouble());
        trial.of(Mass.gFromKg(leastKg), "g")
                .atMost(limitG, Basis.REQUEST)
                .noteIf(
                        leastKg > most.getAsDouble(),
                        "ballast-over-mass-limit",
                        "With the least ballast the aircraft has %.0f g, over the greatest take-off mass of %.0f g.",
                        Mass.gFromKg(leastKg),
                        limitG);
    }
}
