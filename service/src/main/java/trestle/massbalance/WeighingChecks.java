package trestle.massbalance;

import java.util.List;
import java.util.stream.Collectors;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Mass;

/** The checks of a weighing: whether the scales can be believed, and whether the list agrees with them. */
final class WeighingChecks {
    private static final Subject WEIGHING = Subject.of(BalancePart.WEIGHING);

    private final Situation found;

    private WeighingChecks(Situation found) {
        this.found = found;
    }

    static void judge(Situation found, Judge judge) {
        WeighingChecks checks = new WeighingChecks(found);
        boolean weighing = found.task().weighing().isPresent();
        judge.check("scales", "what the scales can tell", WEIGHING, trial -> {
            if (weighing) {
                checks.scales(trial, found.task().weighing().get());
            } else {
                trial.notJudged(WEIGHING);
            }
        });
        judge.check("weighed-mass", "mass of the list against the scales", WEIGHING, checks::mass);
        judge.check("weighed-arm", "CG of the list against the scales", WEIGHING, checks::arm);
    }

    private void scales(Trial trial, Weighing weighing) {
        List<Support> supports = weighing.supports();
        String unloaded = supports.stream()
                .filter(support -> support.netKg() <= 0)
                .map(support -> Judge.text("%s %.0f g", support.name(), Mass.gFromKg(support.netKg())))
                .collect(Collectors.joining(", "));
        for (int i = supports.size() - 1; i >= 0; i--) {
            if (supports.get(i).netKg() <= 0) {
                trial.at(Subject.of(BalancePart.SUPPORT, i));
            }
        }
        trial.attentionIf(
                        !unloaded.isEmpty(),
                        "support-not-loaded",
                        "Less its tare a support carries nothing (%s), so the aircraft was held by something else: the"
                                + " weighing is not used.",
                        unloaded)
                .attentionIf(
                        !Scales.tellsArm(weighing),
                        "supports-at-one-arm",
                        "All supports stand at one arm, so the weighing tells the mass and not the CG: put them further"
                                + " apart along the fuselage.")
                .attentionIf(
                        Scales.hasThreePlaces(weighing) && !Scales.tellsLateral(weighing),
                        "supports-in-line",
                        "The three supports stand in one line, so the weighing does not tell the lateral CG: put one of"
                                + " them off the line.");
        boolean some = supports.stream().anyMatch(s -> s.lateralM().isPresent());
        if (supports.size() == 3 && some && !Scales.hasThreePlaces(weighing)) {
            trial.at(Subject.of(BalancePart.SUPPORT_LATERAL, firstUnplaced(supports)))
                    .noteIf(
                            true,
                            "support-without-lateral-place",
                            "The weighing tells no lateral CG until lateral_mm of every support is given.");
        }
    }

    private static int firstUnplaced(List<Support> supports) {
        int index = 0;
        while (supports.get(index).lateralM().isPresent()) {
            index++;
        }
        return index;
    }

    private void mass(Trial trial) {
        if (found.weighed().isEmpty()) {
            trial.notJudged(missing());
            return;
        }
        Weighed scales = found.weighed().get();
        double allowedKg = allowedKg(scales);
        trial.of(Math.abs(Mass.gFromKg(scales.differenceFromItemsKg())), "g")
                .atMost(Mass.gFromKg(allowedKg), Basis.COMPUTED)
                .attentionIf(
                        apart(scales),
                        "weighing-differs-in-mass",
                        "The scales show %s g and the list adds up to %s g, with %s allowed by the tolerances: the scales'"
                                + " figures are used%s.",
                        Said.g(scales.massKg(), found.list().massKg()),
                        Said.g(found.list().massKg(), scales.massKg()),
                        Said.mass(allowedKg),
                        scales.missing().map(WeighingChecks::explained).orElse(""));
    }

    private static String explained(MissingItem item) {
        return Judge.text(
                item.massKg() > 0
                        ? "; an item of %s at %.0f mm that the list lacks would explain it"
                        : "; an item of %s at %.0f mm too many in the list would explain it",
                Said.mass(item.massKg()),
                Length.mmFromM(item.armM()));
    }

    /** An arm says nothing of a list that lacks an item. */
    private void arm(Trial trial) {
        if (found.weighed().isEmpty()
                || apart(found.weighed().get())
                || found.weighed().get().differenceFromItemsM().isEmpty()) {
            trial.notJudged(missing());
            return;
        }
        Weighed scales = found.weighed().get();
        double apartM = scales.differenceFromItemsM().getAsDouble();
        double allowedM = Math.hypot(scales.armToleranceM(), found.list().armToleranceM());
        trial.of(Length.mmFromM(Math.abs(apartM)), "mm")
                .atMost(Length.mmFromM(allowedM), Basis.COMPUTED)
                .attentionIf(
                        Math.abs(apartM) > allowedM + MassBalance.ROUNDING_M,
                        "weighing-differs-in-arm",
                        "Scales and list agree in mass, but the weighed CG is %s %s of that of the list, with %s allowed"
                                + " by the tolerances: the scales' CG is used, and an arm of the list is wrong.",
                        Said.distance(apartM),
                        Said.way(apartM),
                        Said.distance(allowedM));
    }

    /** A weighing, unless there is one, of which more is said where it cannot be used. */
    private Subject[] missing() {
        return found.task().weighing().isPresent() ? new Subject[0] : new Subject[] {WEIGHING};
    }

    private double allowedKg(Weighed scales) {
        return Math.hypot(scales.massToleranceKg(), found.list().massToleranceKg());
    }

    private boolean apart(Weighed scales) {
        return Math.abs(scales.differenceFromItemsKg()) > allowedKg(scales) + MassBalance.ROUNDING_KG;
    }
}
