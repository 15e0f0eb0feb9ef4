package trestle.wiring;

import static trestle.wiring.WireFindings.celsius;
import static trestle.wiring.WireFindings.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Mass;
import trestle.units.Share;

/** What is to be said of the one gauge that was asked about. */
final class CheckedGaugeFindings {
    /** A saving below this is not worth a sentence, g. */
    private static final double LEAST_SAVING_G = 1;

    private final WireTask task;
    private final GaugeAnswer answer;
    private final String label;
    private final List<Finding> findings = new ArrayList<>();

    private CheckedGaugeFindings(WireTask task, GaugeAnswer answer) {
        this.task = task;
        this.answer = answer;
        this.label = answer.gauge().label();
    }

    static List<Finding> of(WireTask task, GaugeAnswer answer, Optional<GaugeAnswer> recommended) {
        CheckedGaugeFindings about = new CheckedGaugeFindings(task, answer);
        about.temperature();
        about.peak();
        about.drop();
        if (answer.meets()) {
            recommended.ifPresent(about::lighter);
        }
        return about.findings;
    }

    private void temperature() {
        double currentA = task.run().currentA();
        double ratingC = celsius(task.insulation().ratingTemperatureK());
        double limitC = celsius(task.temperatureLimitK());
        if (answer.conductorTemperatureK().isEmpty()) {
            add(
                    Severity.STOP,
                    "wire-runaway",
                    WiringPart.GAUGE,
                    currentA,
                    answer.ampacityA(),
                    text(
                            "%s does not settle below the melting point of copper at %.4g A: it"
                                    + " carries %.3g A at the rating of its insulation.",
                            label, currentA, answer.ampacityA()));
            return;
        }
        double settledC = celsius(answer.conductorTemperatureK().getAsDouble());
        if (settledC > ratingC) {
            add(
                    Severity.STOP,
                    "wire-too-hot",
                    WiringPart.GAUGE,
                    settledC,
                    ratingC,
                    text(
                            "%s settles at %.0f °C, above the %.0f °C that its insulation is rated"
                                    + " for: it carries %.3g A there.",
                            label, settledC, ratingC, answer.ampacityA()));
        } else if (settledC > limitC) {
            add(
                    Severity.ATTENTION,
                    "wire-hot",
                    WiringPart.GAUGE,
                    settledC,
                    limitC,
                    text(
                            "%s settles at %.1f °C, and %.0f °C would leave 10 °C to the rating of its insulation.",
                            label, settledC, limitC));
        }
    }

    private void peak() {
        if (!answer.fails().contains(Shortfall.PEAK)) {
            return;
        }
        double reachedC = celsius(answer.peakTemperatureK().orElse(Copper.MELTING_POINT_K));
        double ratingC = celsius(task.insulation().ratingTemperatureK());
        add(
                Severity.STOP,
                "wire-too-hot-in-peak",
                WiringPart.PEAK_CURRENT,
                reachedC,
                ratingC,
                text(
                        answer.meltsInPeak()
                                ? "%s melts in the peak, at %.0f °C; its insulation is rated for" + " %.0f °C."
                                : "%s reaches %.0f °C in the peak; its insulation is rated for" + " %.0f °C.",
                        label,
                        reachedC,
                        ratingC));
    }

    private void drop() {
        double percent = Share.percentFromFraction(answer.totalDropFraction());
        double limitPercent = Share.percentFromFraction(task.maxDropFraction());
        if (answer.totalDropFraction() >= 1) {
            add(
                    Severity.STOP,
                    "drop-above-supply",
                    WiringPart.SUPPLY_VOLTAGE,
                    answer.totalDropV(),
                    task.run().supplyVoltageV(),
                    text(
                            "%s would drop %.4g V of a supply of %.4g V: this current cannot flow.",
                            label, answer.totalDropV(), task.run().supplyVoltageV()));
        } else if (answer.fails().contains(Shortfall.DROP)) {
            add(
                    Severity.ATTENTION,
                    "drop-above-limit",
                    WiringPart.MAX_DROP,
                    percent,
                    limitPercent,
                    text(
                            "%s drops %.3g %% of the supply, connectors included; the limit is" + " %.3g %%.",
                            label, percent, limitPercent));
        }
    }

    private void lighter(GaugeAnswer recommended) {
        double massG = Mass.gFromKg(answer.massKg());
        double lighterG = Mass.gFromKg(recommended.massKg());
        if (massG - lighterG > LEAST_SAVING_G) {
            add(
                    Severity.NOTE,
                    "lighter-gauge-meets",
                    WiringPart.GAUGE,
                    massG,
                    lighterG,
                    text(
                            "%s meets every limit too, and weighs %.3g g instead of %.3g g.",
                            recommended.gauge().label(), lighterG, massG));
        }
    }

    private void add(Severity severity, String code, WiringPart part, double value, double limit, String message) {
        findings.add(Finding.of(severity, code, Subject.of(part), value, limit, message));
    }
}
