package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;

/** The checks of the static margin against what flies well. */
final class StabilityChecks {
    /** Below this a survey aircraft needs a pilot's hands; common practice, no source. */
    static final double LEAST_MARGIN_FRACTION = 0.05;

    /** Above this elevator and trim drag run out; common practice, no source. */
    static final double GREATEST_MARGIN_FRACTION = 0.25;

    private static final Subject WING = Subject.of(BalancePart.WING);
    private static final Subject TAIL = Subject.of(BalancePart.TAIL);

    private final Optional<Planform> planform;
    private final Optional<TailArrangement> tail;
    private final Optional<NeutralPoint> neutralPoint;

    private StabilityChecks(
            Optional<Planform> planform, Optional<TailArrangement> tail, Optional<NeutralPoint> neutralPoint) {
        this.planform = planform;
        this.tail = tail;
        this.neutralPoint = neutralPoint;
    }

    static void judge(
            Optional<Planform> planform,
            Optional<TailArrangement> tail,
            Optional<NeutralPoint> neutralPoint,
            List<Standing> standings,
            Judge judge) {
        StabilityChecks checks = new StabilityChecks(planform, tail, neutralPoint);
        if (tail.isPresent() && planform.isEmpty()) {
            judge.note(
                    "tail-needs-wing",
                    TAIL,
                    "The tail tells nothing without the wing: give the wing to get the neutral point.");
        }
        judge.check(
                "tail-behind-wing", "tail behind the wing", Subject.of(BalancePart.TAIL_ARM), checks::tailBehindWing);
        for (Standing standing : standings) {
            String of = standing.source().isPresent() ? " of the weighed aircraft" : "";
            Subject subject = standing.about(BalancePart.ITEMS);
            judge.check("static-margin", "static margin" + of, subject, trial -> checks.margin(trial, standing));
        }
    }

    private void tailBehindWing(Trial trial) {
        if (planform.isEmpty() || tail.isEmpty()) {
            trial.notJudged(planform.isEmpty() ? WING : TAIL);
        } else {
            trial.attentionIf(
                    neutralPoint.isEmpty(),
                    "canard-not-covered",
                    "The tail's quarter chord lies ahead of the wing's: the neutral point of a canard is not covered,"
                            + " so stability was not checked.");
        }
    }

    private void margin(Trial trial, Standing standing) {
        if (neutralPoint.isEmpty() || standing.arm().isEmpty()) {
            trial.notJudged(WING, TAIL);
            return;
        }
        double margin = (neutralPoint.get().armM() - standing.arm().get())
                / planform.orElseThrow().meanAerodynamicChordM();
        double percent = Share.percentFromFraction(margin);
        trial.of(percent, "%")
                .atLeast(0, Basis.COMPUTED)
                .stopIf(
                        margin < 0,
                        "statically-unstable",
                        "%s CG leaves a static margin of %.1f %% of the mean chord, below 0 %%: the"
                                + " aircraft is unstable; move mass forward.",
                        standing.called(),
                        percent)
                .atLeast(Share.percentFromFraction(LEAST_MARGIN_FRACTION), Basis.COMMON_PRACTICE)
                .attentionIf(
                        margin < LEAST_MARGIN_FRACTION,
                        "static-margin-low",
                        "%s CG leaves a static margin of %.1f %% of the mean chord, below 5 %%: expect a twitchy aircraft.",
                        standing.called(),
                        percent)
                .atMost(Share.percentFromFraction(GREATEST_MARGIN_FRACTION), Basis.COMMON_PRACTICE)
                .attentionIf(
                        margin > GREATEST_MARGIN_FRACTION,
                        "static-margin-high",
                        "%s CG leaves a static margin of %.1f %% of the mean chord, above 25 %%: expect"
                                + " trim drag and little elevator left to flare.",
                        standing.called(),
                        percent);
    }
}
