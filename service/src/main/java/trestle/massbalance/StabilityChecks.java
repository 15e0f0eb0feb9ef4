package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Share;

/** The checks of the CG against the wing, and of the static margin against what flies well. */
final class StabilityChecks {
    /** Below this an aircraft needs a pilot's hands; common practice, no source. */
    static final double LEAST_MARGIN_FRACTION = 0.05;

    /** Above this elevator and trim drag run out; common practice, no source. */
    static final double GREATEST_MARGIN_FRACTION = 0.25;

    /** Where a CG is brought that has no other target; common practice, no source. */
    static final double USUAL_MARGIN_FRACTION = 0.1;

    /** No aircraft balances this many mean chords forward or aft of its wing; common practice, no source. */
    static final double FAR_FROM_CHORD = 0.5;

    private static final Subject ITEMS = Subject.of(BalancePart.ITEMS);

    private final Situation found;
    private final String remedy;

    private StabilityChecks(Situation found, String remedy) {
        this.found = found;
        this.remedy = remedy;
    }

    static void judge(Situation found, String remedy, Judge judge) {
        StabilityChecks checks = new StabilityChecks(found, remedy);
        judge.check("cg-at-wing", "CG near the wing", ITEMS, checks::nearWing);
        judge.check("static-margin", "static margin", ITEMS, checks::margin);
    }

    /** What lacks for a static margin; nothing where the tail lies where no field helps. */
    static List<Subject> missing(Situation found) {
        List<Subject> missing = new ArrayList<>();
        if (found.planform().isEmpty()) {
            missing.add(Subject.of(BalancePart.WING));
        }
        if (found.task().tail().isEmpty()) {
            missing.add(Subject.of(BalancePart.TAIL));
        }
        return missing;
    }

    private void nearWing(Trial trial) {
        if (found.planform().isEmpty()) {
            trial.notJudged(Subject.of(BalancePart.WING));
            return;
        }
        double percent = Share.percentFromFraction(found.cgMacFraction().getAsDouble());
        double far = Share.percentFromFraction(FAR_FROM_CHORD);
        String sentence = "The CG at %.1f mm lies at %.0f %% of the mean aerodynamic chord, where no aircraft balances"
                + " (common practice: %.0f to %.0f %%): look for an arm that is counted from another datum, or in cm.";
        Trial held = trial.of(percent, "%");
        if (percent < 0) {
            held.atLeast(-far, Basis.COMMON_PRACTICE);
        } else {
            held.atMost(100 + far, Basis.COMMON_PRACTICE);
        }
        held.stopIf(
                found.offTheWing(),
                "cg-off-the-wing",
                sentence,
                Length.mmFromM(found.centre().armM()),
                percent,
                -far,
                100 + far);
    }

    private void margin(Trial trial) {
        if (found.neutralPoint().isEmpty()) {
            noMargin(trial);
            return;
        }
        double margin = found.marginFraction().getAsDouble();
        double percent = Share.percentFromFraction(margin);
        double tolerance =
                Share.percentFromFraction(found.marginToleranceFraction().getAsDouble());
        double least = Share.percentFromFraction(LEAST_MARGIN_FRACTION);
        double most = Share.percentFromFraction(GREATEST_MARGIN_FRACTION);
        // What is said of arms, and of a CG forward of its range, is said there.
        trial.of(percent, "%")
                .atLeast(least, Basis.COMMON_PRACTICE)
                .asSaid(found.offTheWing(), Severity.STOP)
                .atLeast(0, Basis.COMPUTED)
                .stopIf(
                        margin < 0,
                        "statically-unstable",
                        "The static margin is %s ± %.1f %% of the mean aerodynamic chord, below 0: the aircraft is"
                                + " unstable in pitch%s.",
                        Said.apart(percent, 0, 1),
                        tolerance,
                        remedy)
                .atLeast(least, Basis.COMMON_PRACTICE)
                .attentionIf(
                        margin < LEAST_MARGIN_FRACTION,
                        "static-margin-low",
                        "The static margin is %s ± %.1f %% of the mean aerodynamic chord, below %.0f %% (common practice):"
                                + " pitch will be sensitive%s.",
                        Said.apart(percent, least, 1),
                        tolerance,
                        least,
                        remedy)
                .attentionIf(
                        percent - tolerance < least,
                        "static-margin-uncertain",
                        "The static margin is %.1f ± %.1f %% of the mean aerodynamic chord, so it may be below %.0f %%"
                                + " (common practice): begin flying with the CG %s further forward and move it aft in"
                                + " steps.",
                        percent,
                        tolerance,
                        least,
                        Said.distance(Share.fractionFromPercent(least + tolerance - percent)
                                * found.planform().orElseThrow().meanAerodynamicChordM()))
                .atMost(most, Basis.COMMON_PRACTICE)
                .attentionIf(
                        margin > GREATEST_MARGIN_FRACTION,
                        "static-margin-high",
                        "The static margin is %s ± %.1f %% of the mean aerodynamic chord, above %.0f %% (common practice):"
                                + " expect trim drag and little elevator left to flare%s.",
                        Said.apart(percent, most, 1),
                        tolerance,
                        most,
                        remedy);
    }

    private void noMargin(Trial trial) {
        List<Subject> missing = missing(found);
        if (missing.isEmpty()) {
            trial.at(Subject.of(BalancePart.TAIL_ARM))
                    .notJudged(
                            List.of(),
                            Severity.ATTENTION,
                            "canard-not-covered",
                            "The tail's quarter chord lies forward of the wing's: the neutral point of a canard is not"
                                    + " covered here, so judge its CG by limits from its maker or from a glide test.");
        } else {
            trial.notJudged(missing.toArray(Subject[]::new));
        }
    }
}
