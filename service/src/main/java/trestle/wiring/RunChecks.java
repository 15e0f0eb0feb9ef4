package trestle.wiring;

import static trestle.finding.Digits.significant;

import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Length;
import trestle.units.Resistance;

/** The checks of a run whatever its gauge: its connectors, its length, whether its numbers can be meant. */
final class RunChecks {
    /** Share of a connector's rating from which it is looked at. Common practice, no source. */
    static final double CONNECTOR_ATTENTION_FRACTION = 0.8;

    /** Pack leads longer than this want capacitors, m. Common practice, no source. */
    static final double LONG_LEAD_M = 0.2;

    /** Inductance of a pair of leads, H/m: 0.6 to 0.8 µH. Common practice, no source. */
    static final double PAIR_INDUCTANCE_H_PER_M = 0.7e-6;

    /** More than an aircraft of this size takes, A, and far more. Common practice, no source. */
    static final double MUCH_CURRENT_A = 200;

    static final double TOO_MUCH_CURRENT_A = 500;

    /** Shorter than a plug, m, and far shorter. Common practice, no source. */
    static final double SHORT_M = 0.02;

    static final double TOO_SHORT_M = 0.005;

    /** Longer than an aircraft of this size, m. Common practice, no source. */
    static final double LONG_M = 6;

    /** What a contact of a power connector has at the least and at the most, Ω. Common practice, no source. */
    static final double LEAST_CONTACT_OHM = 0.02e-3;

    static final double MOST_CONTACT_OHM = 20e-3;

    private final WireRun run;

    private RunChecks(WireRun run) {
        this.run = run;
    }

    static void judge(WireRun run, Judge judge) {
        RunChecks checks = new RunChecks(run);
        checks.connectors(judge);
        judge.check(
                "lead-length",
                "length of a lead from pack to motor controller",
                Subject.of(WiringPart.LENGTH),
                checks::longLead);
        judge.check("current-plausible", "current as typed", Subject.of(WiringPart.CURRENT), checks::current);
        judge.check("length-plausible", "length as typed", Subject.of(WiringPart.LENGTH), checks::length);
    }

    private void connectors(Judge judge) {
        if (run.connectors().isEmpty()) {
            Subject connectors = Subject.of(WiringPart.CONNECTORS);
            judge.essential("connector-current", "current of the connectors", connectors, trial -> {
                if (!run.connectorsKnown()) {
                    trial.notJudged(connectors);
                }
            });
        }
        for (int i = 0; i < run.connectors().size(); i++) {
            Connector connector = run.connectors().get(i);
            Subject subject = Subject.of(WiringPart.CONNECTOR, i);
            judge.essential(
                    "connector-current",
                    "current of connector " + connector.name(),
                    subject,
                    trial -> current(connector, trial));
            judge.check(
                    "contact-plausible",
                    "contact resistance of " + connector.name() + " as typed",
                    subject,
                    trial -> contact(connector, trial));
        }
    }

    private void current(Connector connector, Trial trial) {
        double currentA = run.currentA();
        double peakA = run.peak().map(CurrentPeak::currentA).orElse(currentA);
        double ratedA = connector.ratedCurrentA();
        double attentionA = CONNECTOR_ATTENTION_FRACTION * ratedA;
        trial.of(currentA, "A")
                .atMost(ratedA, Basis.REQUEST)
                .stop(
                        "connector-overloaded",
                        "Connector %s carries %s A, above its rating of %s A: use one rated for %.0f A or more.",
                        connector.name(),
                        Digits.beside(currentA, ratedA, 1),
                        significant(ratedA, 4),
                        Math.ceil(currentA / CONNECTOR_ATTENTION_FRACTION))
                .atMost(attentionA, Basis.COMMON_PRACTICE)
                .attention(
                        "connector-near-rating",
                        "Connector %s carries %s A, above %s A, 80 %% (common practice) of its rating: a worn contact"
                                + " will run hot; use one rated for %.0f A or more.",
                        connector.name(),
                        Digits.beside(currentA, attentionA, 1),
                        significant(attentionA, 4),
                        Math.ceil(currentA / CONNECTOR_ATTENTION_FRACTION));
        if (currentA <= attentionA && peakA > ratedA) {
            trial.of(peakA, "A")
                    .atMost(ratedA, Basis.REQUEST)
                    .attention(
                            "connector-peak-above-rating",
                            "Connector %s carries %s A in the peak, above its continuous rating of %s A: see in its"
                                    + " data sheet that it is rated for %s s of that, or use one rated for %.0f A.",
                            connector.name(),
                            Digits.beside(peakA, ratedA, 1),
                            significant(ratedA, 4),
                            significant(run.peak().orElseThrow().durationS(), 3),
                            Math.ceil(peakA));
        }
    }

    private static void contact(Connector connector, Trial trial) {
        double milliohm = Resistance.milliohmFromOhm(connector.contactResistanceOhm());
        double least = Resistance.milliohmFromOhm(LEAST_CONTACT_OHM);
        double most = Resistance.milliohmFromOhm(MOST_CONTACT_OHM);
        trial.of(milliohm, "mΩ")
                .atMost(most, Basis.COMMON_PRACTICE)
                .attention(
                        "contact-resistance-doubtful",
                        "A contact of %s has %s mΩ, above the %s mΩ of any sound power connector (common practice):"
                                + " is it in microohms? Give milliohms.",
                        connector.name(),
                        significant(milliohm, 4),
                        significant(most, 2))
                .atLeast(least, Basis.COMMON_PRACTICE)
                .attention(
                        "contact-resistance-doubtful",
                        "A contact of %s has %s mΩ, below the %s mΩ of any power connector (common practice): is it"
                                + " in ohms? Give milliohms.",
                        connector.name(),
                        significant(milliohm, 4),
                        significant(least, 2));
    }

    private void longLead(Trial trial) {
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
                        "The lead from pack to motor controller is %s mm long, more than %.0f mm (common practice),"
                                + " about %.2f µH: fit low-ESR capacitors at the controller's input, and lay the two"
                                + " leads close together or twist them.",
                        Digits.beside(lengthMm, limitMm, 0),
                        limitMm,
                        1e6 * PAIR_INDUCTANCE_H_PER_M * run.lengthM());
    }

    private void current(Trial trial) {
        double currentA = run.peak().map(CurrentPeak::currentA).orElse(run.currentA());
        String typed = significant(currentA, 4);
        String meant = significant(currentA / 1000, 4);
        String sentence = "%s A is more than the %.0f A of any aircraft of this size (common practice): is it in mA?"
                + " %s mA are %s A.";
        trial.of(currentA, "A")
                .atMost(TOO_MUCH_CURRENT_A, Basis.COMMON_PRACTICE)
                .stop("current-implausible", sentence, typed, TOO_MUCH_CURRENT_A, typed, meant)
                .atMost(MUCH_CURRENT_A, Basis.COMMON_PRACTICE)
                .attention("current-implausible", sentence, typed, MUCH_CURRENT_A, typed, meant);
    }

    private void length(Trial trial) {
        double lengthMm = Length.mmFromM(run.lengthM());
        String typed = significant(lengthMm, 4);
        String shorter = "The run is %s mm long, shorter than %.0f mm (common practice): is it in m? %s m are %.0f mm.";
        double shortMm = Length.mmFromM(SHORT_M);
        double longMm = Length.mmFromM(LONG_M);
        trial.of(lengthMm, "mm")
                .atLeast(Length.mmFromM(TOO_SHORT_M), Basis.COMMON_PRACTICE)
                .stop("length-implausible", shorter, typed, shortMm, typed, 1000 * lengthMm)
                .atLeast(shortMm, Basis.COMMON_PRACTICE)
                .attention("length-implausible", shorter, typed, shortMm, typed, 1000 * lengthMm)
                .atMost(longMm, Basis.COMMON_PRACTICE)
                .attention(
                        "length-implausible",
                        "The run is %s mm long, more than the %.0f mm of any aircraft of this size (common practice):"
                                + " give its length one way, in mm.",
                        typed,
                        longMm);
    }
}
