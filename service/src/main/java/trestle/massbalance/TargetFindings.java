package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Length;
import trestle.units.Mass;

/** Whether the CG is at its target, and whether what can be moved gets it there. */
final class TargetFindings {
    private TargetFindings() {}

    static Finding unplaced(Target target) {
        boolean margin = target instanceof Target.StaticMargin;
        return Finding.of(
                Severity.ATTENTION,
                margin ? "target-needs-neutral-point" : "target-needs-wing",
                Subject.of(BalancePart.TARGET),
                margin
                        ? "A target in static margin needs a neutral point: give the wing and a" + " tail behind it."
                        : "A target in percent of the mean chord needs the wing: give it, or the target as an arm.");
    }

    static List<Finding> of(Aim aim, List<Item> items, Centre centre, OptionalDouble maximumTakeoffMassKg) {
        List<Finding> findings = new ArrayList<>();
        double offM = centre.armM() - aim.targetArmM();
        if (Math.abs(offM) > centre.armToleranceM() + MassBalance.ROUNDING_M) {
            findings.add(off(aim, centre, offM));
        }
        for (int i = 0; i < items.size(); i++) {
            outside(items.get(i), i).ifPresent(findings::add);
        }
        maximumTakeoffMassKg.ifPresent(limit -> heavy(aim, limit).ifPresent(findings::add));
        return findings;
    }

    private static Finding off(Aim aim, Centre centre, double offM) {
        double cgMm = Length.mmFromM(centre.armM());
        double targetMm = Length.mmFromM(aim.targetArmM());
        String where = text(
                "The CG at %.1f mm is %.1f mm %s the target at %.1f mm",
                cgMm, Math.abs(Length.mmFromM(offM)), offM > 0 ? "behind" : "ahead of", targetMm);
        Subject subject = Subject.of(BalancePart.TARGET);
        if (aim.reachable() || aim.together().isEmpty()) {
            String way =
                    aim.together().isEmpty() ? " and no item is movable." : "; what is movable can bring it there.";
            return Finding.of(Severity.NOTE, "cg-off-target", subject, cgMm, targetMm, where + way);
        }
        return Finding.of(
                Severity.ATTENTION,
                "target-out-of-reach",
                subject,
                cgMm,
                targetMm,
                where
                        + text(
                                ", and moving all that is movable brings it only to %.1f mm.",
                                Length.mmFromM(aim.together().get().cgArmM())));
    }

    private static Optional<Finding> outside(Item item, int index) {
        if (item.travel().isEmpty() || item.travel().get().reaches(item.armM())) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                Severity.ATTENTION,
                "item-outside-its-travel",
                Subject.of(BalancePart.ITEM_TRAVEL, index),
                text(
                        "The item %s stands at %.0f mm, outside the %.0f to %.0f mm that" + " it can be moved in.",
                        item.name(),
                        Length.mmFromM(item.armM()),
                        Length.mmFromM(item.travel().get().fromM()),
                        Length.mmFromM(item.travel().get().toM()))));
    }

    private static Optional<Finding> heavy(Aim aim, double limitKg) {
        if (aim.ballast().isEmpty() || aim.ballast().stream().anyMatch(b -> b.totalMassKg() <= limitKg)) {
            return Optional.empty();
        }
        double lightestG = Mass.gFromKg(
                aim.ballast().stream().mapToDouble(Ballast::totalMassKg).min().orElseThrow());
        double limitG = Mass.gFromKg(limitKg);
        return Optional.of(Finding.of(
                Severity.NOTE,
                "ballast-over-mass-limit",
                Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS),
                lightestG,
                limitG,
                text(
                        "With the least ballast the aircraft has %.0f g, over the greatest take-off mass of %.0f g.",
                        lightestG, limitG)));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
