package trestle.massbalance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Share;

/** The static margin against what flies well. */
final class StabilityFindings {
    /** Below this a survey aircraft needs a pilot's hands; common practice, no source. */
    static final double LEAST_MARGIN_FRACTION = 0.05;

    /** Above this elevator and trim drag run out; common practice, no source. */
    static final double GREATEST_MARGIN_FRACTION = 0.25;

    private StabilityFindings() {}

    static List<Finding> of(
            Optional<Planform> planform,
            Optional<TailArrangement> tail,
            Optional<NeutralPoint> neutralPoint,
            List<Standing> standings) {
        List<Finding> findings = new ArrayList<>();
        if (tail.isPresent() && planform.isEmpty()) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    "tail-needs-wing",
                    Subject.of(BalancePart.TAIL),
                    "The tail tells nothing without the wing: give the wing to get the" + " neutral point."));
        }
        if (tail.isPresent() && planform.isPresent() && neutralPoint.isEmpty()) {
            findings.add(Finding.of(
                    Severity.ATTENTION,
                    "canard-not-covered",
                    Subject.of(BalancePart.TAIL_ARM),
                    "The tail's quarter chord lies ahead of the wing's: the neutral point of a canard is not covered,"
                            + " so stability was not checked."));
        }
        if (planform.isPresent() && neutralPoint.isPresent()) {
            for (Standing standing : standings) {
                standing.arm()
                        .ifPresent(armM -> margin(standing, planform.get(), neutralPoint.get(), armM)
                                .ifPresent(findings::add));
            }
        }
        return findings;
    }

    private static Optional<Finding> margin(
            Standing standing, Planform planform, NeutralPoint neutralPoint, double armM) {
        double margin = (neutralPoint.armM() - armM) / planform.meanAerodynamicChordM();
        if (margin < 0) {
            return found(
                    standing,
                    Severity.STOP,
                    "statically-unstable",
                    margin,
                    0,
                    "%s CG leaves a static margin of %.1f %% of the mean chord, below 0 %%: the"
                            + " aircraft is unstable; move mass forward.");
        }
        if (margin < LEAST_MARGIN_FRACTION) {
            return found(
                    standing,
                    Severity.ATTENTION,
                    "static-margin-low",
                    margin,
                    LEAST_MARGIN_FRACTION,
                    "%s CG leaves a static margin of %.1f %% of the mean chord, below 5 %%: expect a twitchy aircraft.");
        }
        if (margin > GREATEST_MARGIN_FRACTION) {
            return found(
                    standing,
                    Severity.ATTENTION,
                    "static-margin-high",
                    margin,
                    GREATEST_MARGIN_FRACTION,
                    "%s CG leaves a static margin of %.1f %% of the mean chord, above 25 %%: expect"
                            + " trim drag and little elevator left to flare.");
        }
        return Optional.empty();
    }

    private static Optional<Finding> found(
            Standing standing, Severity severity, String code, double margin, double limit, String format) {
        double marginPercent = Share.percentFromFraction(margin);
        return Optional.of(Finding.of(
                severity,
                code,
                standing.about(BalancePart.ITEMS),
                marginPercent,
                Share.percentFromFraction(limit),
                String.format(Locale.ROOT, format, standing.called(), marginPercent)));
    }
}
