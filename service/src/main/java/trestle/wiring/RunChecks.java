package trestle.wiring;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;

/** The checks of a run whatever its gauge: its connectors, its length. */
final class RunChecks {
    /** Share of a connector's rating from which it is looked at. Common practice, no source. */
    static final double CONNECTOR_ATTENTION_FRACTION = 0.8;

    /** Battery leads longer than this want capacitors, m. Common practice, no source. */
    static final double LONG_LEAD_M = 0.2;

    /** Inductance of a pair of leads, H/m: 0.6 to 0.8 µH. Common practice, no source. */
    static final double PAIR_INDUCTANCE_H_PER_M = 0.7e-6;

    private RunChecks() {}

    static void judge(WireRun run, Judge judge) {
        for (int i = 0; i < run.connectors().size(); i++) {
            Connector connector = run.connectors().get(i);
            judge.essential(
                    "connector-current",
                    "current of connector " + connector.name(),
                    Subject.of(WiringPart.CONNECTOR, i),
                    trial -> connector(connector, run, trial));
        }
        judge.check(
                "lead-length",
                "length of a lead from battery to controller",
                Subject.of(WiringPart.LENGTH),
                trial -> longLead(run, trial));
    }

    private static void connector(Connector connector, WireRun run, Trial trial) {
        double currentA = run.currentA();
        double peakA = run.peak().map(CurrentPeak::currentA).orElse(currentA);
        double ratedA = connector.ratedCurrentA();
        double attentionA = CONNECTOR_ATTENTION_FRACTION * ratedA;
        trial.of(currentA, "A")
                .atMost(ratedA, Basis.REQUEST)
                .stop(
                        "connector-overloaded",
                        "Connector %s carries %.4g A, above its rating of %.4g A: use a larger one.",
                        connector.name(),
                        currentA,
                        ratedA)
                .atMost(attentionA, Basis.COMMON_PRACTICE)
                .attention(
                        "connector-near-rating",
                        "Connector %s carries %.4g A, above %.4g A, 80 %% of its rating: a worn contact will run hot.",
                        connector.name(),
                        currentA,
                        attentionA);
        if (currentA <= attentionA && peakA > ratedA) {
            trial.of(peakA, "A")
                    .atMost(ratedA, Basis.REQUEST)
                    .attention(
                            "connector-peak-above-rating",
                            "Connector %s carries %.4g A in the peak, above its continuous rating of %.4g A: see that"
                                    + " it is meant for that long a peak.",
                            connector.name(),
                            peakA,
                            ratedA);
        }
    }

    private static void longLead(WireRun run, Trial trial) {
        if (!run.feedsController()) {
            return;
        }
        double lengthMm = Length.mmFromM(run.lengthM());
        double limitMm = Length.mmFromM(LONG_LEAD_M);
        trial.of(lengthMm, "mm")
                .atMost(limitMm, Basis.COMMON_PRACTICE)
                .attentionIf(
                        run.lengthM() > LONG_LEAD_M,
                        "long-supply-lead",
                        "The lead from battery to controller is %.0f mm long, more than %.0f mm, about %.2f µH: fit"
                                + " low-ESR capacitors at the controller's input, and lay the two leads close together"
                                + " or twist them.",
                        lengthMm,
                        limitMm,
                        1e6 * PAIR_INDUCTANCE_H_PER_M * run.lengthM());
    }
}
