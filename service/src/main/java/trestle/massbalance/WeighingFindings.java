package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Length;
import trestle.units.Mass;

/** Whether the scales can be believed, and whether the list agrees with them. */
final class WeighingFindings {
    private WeighingFindings() {}

    static List<Finding> of(Weighing weighing, Optional<Weighed> weighed, Centre list) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < weighing.supports().size(); i++) {
            Support support = weighing.supports().get(i);
            if (support.netKg() <= 0) {
                findings.add(unloaded(support, i));
            }
        }
        if (!Scales.tellsArm(weighing)) {
            findings.add(said(
                    "supports-at-one-arm",
                    "All supports stand at one arm, so the weighing tells the mass and not the arm of the CG: put them"
                            + " further apart along the fuselage."));
        }
        if (Scales.hasThreePlaces(weighing) && !Scales.tellsLateral(weighing)) {
            findings.add(
                    said(
                            "supports-in-line",
                            "The three supports stand in one line, so the weighing does not tell the lateral place of the CG."));
        }
        unplaced(weighing).ifPresent(findings::add);
        weighed.flatMap(scales -> difference(scales, list)).ifPresent(findings::add);
        return findings;
    }

    private static Finding unloaded(Support support, int index) {
        return Finding.of(
                Severity.ATTENTION,
                "support-not-loaded",
                Subject.of(BalancePart.SUPPORT, index),
                Mass.gFromKg(support.netKg()),
                0,
                text(
                        "The support %s carries %.0f g after its tare and must carry more than 0 g;"
                                + " the weighing is not used.",
                        support.name(), Mass.gFromKg(support.netKg())));
    }

    private static Optional<Finding> unplaced(Weighing weighing) {
        long placed = weighing.supports().stream()
                .filter(s -> s.lateralM().isPresent())
                .count();
        if (weighing.supports().size() < 3
                || placed == 0
                || placed == weighing.supports().size()) {
            return Optional.empty();
        }
        for (int i = 0; i < weighing.supports().size(); i++) {
            if (weighing.supports().get(i).lateralM().isEmpty()) {
                return Optional.of(Finding.of(
                        Severity.NOTE,
                        "support-without-lateral-place",
                        Subject.of(BalancePart.SUPPORT_LATERAL, i),
                        "The weighing tells no lateral CG until the lateral place of every" + " support is given."));
            }
        }
        return Optional.empty();
    }

    private static Optional<Finding> difference(Weighed scales, Centre list) {
        double apartKg = scales.differenceFromItemsKg();
        double allowedKg = Math.hypot(scales.massToleranceKg(), list.massToleranceKg());
        if (Math.abs(apartKg) > allowedKg + MassBalance.ROUNDING_KG) {
            return Optional.of(massApart(scales, list, apartKg, allowedKg));
        }
        double apartM = scales.differenceFromItemsM().orElse(0);
        double allowedM = Math.hypot(scales.armToleranceM(), list.armToleranceM());
        if (Math.abs(apartM) > allowedM + MassBalance.ROUNDING_M) {
            return Optional.of(Finding.of(
                    Severity.ATTENTION,
                    "weighing-differs-in-arm",
                    Subject.of(BalancePart.WEIGHING),
                    Length.mmFromM(apartM),
                    Length.mmFromM(allowedM),
                    text(
                            "Scales and list agree in mass, but the weighed CG is %.1f mm %s that of the list, with"
                                    + " %.1f mm allowed by the tolerances: an arm is wrong.",
                            Math.abs(Length.mmFromM(apartM)),
                            apartM > 0 ? "behind" : "ahead of",
                            Length.mmFromM(allowedM))));
        }
        return Optional.empty();
    }

    private static Finding massApart(Weighed scales, Centre list, double apartKg, double allowedKg) {
        String explained = scales.missing()
                .map(item -> text(
                        "; %s of %.0f g at %.0f mm would explain it",
                        item.massKg() > 0 ? "a missing item" : "an item too many",
                        Math.abs(Mass.gFromKg(item.massKg())),
                        Length.mmFromM(item.armM())))
                .orElse("");
        return Finding.of(
                Severity.ATTENTION,
                "weighing-differs-in-mass",
                Subject.of(BalancePart.WEIGHING),
                Mass.gFromKg(apartKg),
                Mass.gFromKg(allowedKg),
                text(
                        "The scales show %.0f g and the list adds up to %.0f g, with %.0f g allowed"
                                + " by the tolerances%s.",
                        Mass.gFromKg(scales.massKg()),
                        Mass.gFromKg(list.massKg()),
                        Mass.gFromKg(allowedKg),
                        explained));
    }

    private static Finding said(String code, String message) {
        return Finding.of(Severity.ATTENTION, code, Subject.of(BalancePart.WEIGHING), message);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
