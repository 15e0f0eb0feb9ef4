package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Mass;

/** The checks of a weighing: whether the scales can be believed, and whether the list agrees with them. */
final class WeighingChecks {
    private static final Subject WEIGHING = Subject.of(BalancePart.WEIGHING);

    private final Weighing weighing;
    private final Optional<Weighed> weighed;
    private final Centre list;

    private WeighingChecks(Weighing weighing, Optional<Weighed> weighed, Centre list) {
        this.weighing = weighing;
        this.weighed = weighed;
        this.list = list;
    }

    static void judge(Optional<Weighing> weighing, Optional<Weighed> weighed, Centre list, Judge judge) {
        Optional<WeighingChecks> checks = weighing.map(w -> new WeighingChecks(w, weighed, list));
        int supports = weighing.map(w -> w.supports().size()).orElse(0);
        for (int i = 0; i < supports; i++) {
            int index = i;
            judge.check(
                    "support-load",
                    "load on support " + weighing.get().supports().get(i).name(),
                    Subject.of(BalancePart.SUPPORT, i),
                    trial -> checks.get().load(trial, index));
        }
        judge.check(
                "supports-along",
                "supports apart along the fuselage",
                WEIGHING,
                trial -> checks.ifPresentOrElse(c -> c.along(trial), () -> trial.notJudged(WEIGHING)));
        judge.check(
                "supports-across",
                "supports apart across the fuselage",
                WEIGHING,
                trial -> checks.ifPresentOrElse(c -> c.across(trial), () -> trial.notJudged(WEIGHING)));
        judge.check(
                "weighed-mass",
                "mass on the scales against the list",
                WEIGHING,
                trial -> checks.ifPresentOrElse(c -> c.mass(trial), () -> trial.notJudged(WEIGHING)));
        judge.check(
                "weighed-arm",
                "CG on the scales against the list",
                WEIGHING,
                trial -> checks.ifPresentOrElse(c -> c.arm(trial), () -> trial.notJudged(WEIGHING)));
    }

    private void load(Trial trial, int index) {
        Support support = weighing.supports().get(index);
        double netG = Mass.gFromKg(support.netKg());
        trial.of(netG, "g")
                .atLeast(0, Basis.COMPUTED)
                .attentionIf(
                        support.netKg() <= 0,
                        "support-not-loaded",
                        "The support %s carries %.0f g after its tare and must carry more than 0 g;"
                                + " the weighing is not used.",
                        support.name(),
                        netG);
    }

    private void along(Trial trial) {
        trial.attentionIf(
                !Scales.tellsArm(weighing),
                "supports-at-one-arm",
                "All supports stand at one arm, so the weighing tells the mass and not the arm of the CG: put them"
                        + " further apart along the fuselage.");
    }

    private void across(Trial trial) {
        trial.attentionIf(
                Scales.hasThreePlaces(weighing) && !Scales.tellsLateral(weighing),
                "supports-in-line",
                "The three supports stand in one line, so the weighing does not tell the lateral place of the CG.");
        int unplaced = firstUnplaced();
        boolean some = weighing.supports().stream().anyMatch(s -> s.lateralM().isPresent());
        if (weighing.supports().size() == 3 && some && unplaced >= 0) {
            Subject place = Subject.of(BalancePart.SUPPORT_LATERAL, unplaced);
            trial.at(place)
                    .noteIf(
                            true,
                            "support-without-lateral-place",
                            "The weighing tells no lateral CG until the lateral place of every support is given.");
        }
    }

    private int firstUnplaced() {
        List<Support> supports = weighing.supports();
        for (int i = 0; i < supports.size(); i++) {
            if (supports.get(i).lateralM().isEmpty()) {
                return i;
            }
        }
        return -1;
    }

    private void mass(Trial trial) {
        if (weighed.isEmpty()) {
            trial.notJudged(WEIGHING);
            return;
        }
        Weighed scales = weighed.get();
        double apartG = Mass.gFromKg(scales.differenceFromItemsKg());
        double allowedG = Mass.gFromKg(allowedKg(scales));
        trial.of(apartG, "g")
                .atMost(allowedG, Basis.COMPUTED)
                .attentionIf(
                        apart(scales),
                        "weighing-differs-in-mass",
                        "The scales show %.0f g and the list adds up to %.0f g, with %.0f g allowed by the tolerances%s.",
                        Mass.gFromKg(scales.massKg()),
                        Mass.gFromKg(list.massKg()),
                        allowedG,
                        scales.missing().map(WeighingChecks::explained).orElse(""));
    }

    private static String explained(MissingItem item) {
        return Judge.text(
                "; %s of %.0f g at %.0f mm would explain it",
                item.massKg() > 0 ? "a missing item" : "an item too many",
                Math.abs(Mass.gFromKg(item.massKg())),
                Length.mmFromM(item.armM()));
    }

    /** An arm says nothing of a list that lacks an item. */
    private void arm(Trial trial) {
        if (weighed.isEmpty()
                || apart(weighed.get())
                || weighed.get().differenceFromItemsM().isEmpty()) {
            trial.notJudged(WEIGHING);
            return;
        }
        Weighed scales = weighed.get();
        double apartM = scales.differenceFromItemsM().getAsDouble();
        double allowedM = Math.hypot(scales.armToleranceM(), list.armToleranceM());
        trial.of(Length.mmFromM(apartM), "mm")
                .atMost(Length.mmFromM(allowedM), Basis.COMPUTED)
                .attentionIf(
                        Math.abs(apartM) > allowedM + MassBalance.ROUNDING_M,
                        "weighing-differs-in-arm",
                        "Scales and list agree in mass, but the weighed CG is %.1f mm %s that of the list, with"
                                + " %.1f mm allowed by the tolerances: an arm is wrong.",
                        Math.abs(Length.mmFromM(apartM)),
                        apartM > 0 ? "behind" : "ahead of",
                        Length.mmFromM(allowedM));
    }

    private double allowedKg(Weighed scales) {
        return Math.hypot(scales.massToleranceKg(), list.massToleranceKg());
    }

    private boolean apart(Weighed scales) {
        return Math.abs(scales.differenceFromItemsKg()) > allowedKg(scales) + MassBalance.ROUNDING_KG;
    }
}
