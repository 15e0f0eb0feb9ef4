package trestle.wiring;

import static trestle.wiring.WireFindings.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Length;

/** What is to be said of a run whatever its gauge: its connectors, its length. */
final class RunFindings {
    /** Share of a connector's rating from which it is looked at. Common practice, no source. */
    static final double CONNECTOR_ATTENTION_FRACTION = 0.8;

    /** Battery leads longer than this want capacitors, m. Common practice, no source. */
    static final double LONG_LEAD_M = 0.2;

    /** Inductance of a pair of leads, H/m: 0.6 to 0.8 µH. Common practice, no source. */
    static final double PAIR_INDUCTANCE_H_PER_M = 0.7e-6;

    private RunFindings() {}

    static List<Finding> of(WireRun run) {
        List<Finding> findings = new ArrayList<>();
        double peakA = run.peak().map(CurrentPeak::currentA).orElse(run.currentA());
        for (int i = 0; i < run.connectors().size(); i++) {
            connector(run.connectors().get(i), i, run.currentA(), peakA).ifPresent(findings::add);
        }
        if (run.feedsController() && run.lengthM() > LONG_LEAD_M) {
            findings.add(longLead(run.lengthM()));
        }
        return findings;
    }

    private static Optional<Finding> connector(Connector connector, int index, double currentA, double peakA) {
        double ratedA = connector.ratedCurrentA();
        double attentionA = CONNECTOR_ATTENTION_FRACTION * ratedA;
        Subject subject = Subject.of(WiringPart.CONNECTOR, index);
        if (currentA > ratedA) {
            return Optional.of(Finding.of(
                    Severity.STOP,
                    "connector-overloaded",
                    subject,
                    currentA,
                    ratedA,
                    text(
                            "Connector %s carries %.4g A, above its rating of %.4g A: use a" + " larger one.",
                            connector.name(), currentA, ratedA)));
        }
        if (currentA > attentionA) {
            return Optional.of(Finding.of(
                    Severity.ATTENTION,
                    "connector-near-rating",
                    subject,
                    currentA,
                    attentionA,
                    text(
                            "Connector %s carries %.4g A, above %.4g A, 80 %% of its"
                                    + " rating: a worn contact will run hot.",
                            connector.name(), currentA, attentionA)));
        }
        if (peakA > ratedA) {
            return Optional.of(Finding.of(
                    Severity.ATTENTION,
                    "connector-peak-above-rating",
                    subject,
                    peakA,
                    ratedA,
                    text(
                            "Connector %s carries %.4g A in the peak, above its continuous rating of %.4g A: see that"
                                    + " it is meant for that long a peak.",
                            connector.name(), peakA, ratedA)));
        }
        return Optional.empty();
    }

    private static Finding longLead(double lengthM) {
        double lengthMm = Length.mmFromM(lengthM);
        double limitMm = Length.mmFromM(LONG_LEAD_M);
        double inductanceUh = 1e6 * PAIR_INDUCTANCE_H_PER_M * lengthM;
        return Finding.of(
                Severity.ATTENTION,
                "long-supply-lead",
                Subject.of(WiringPart.LENGTH),
                lengthMm,
                limitMm,
                text(
                        "The lead from battery to controller is %.0f mm long, more than %.0f mm,"
                                + " about %.2f µH: fit low-ESR capacitors at the controller's input,"
                                + " and lay the two leads close together or twist them.",
                        lengthMm, limitMm, inductanceUh));
    }
}
