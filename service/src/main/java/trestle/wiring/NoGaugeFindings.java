package trestle.wiring;

import static trestle.wiring.WireFindings.celsius;
import static trestle.wiring.WireFindings.text;

import java.util.List;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Share;

/** Why not even the thickest size on offer meets a task, and what would help. */
final class NoGaugeFindings {
    private final WireTask task;
    private final GaugeAnswer thickest;
    private final String sizes;

    private NoGaugeFindings(WireTask task, GaugeAnswer thickest) {
        this.task = task;
        this.thickest = thickest;
        this.sizes = "No size up to " + thickest.gauge().label();
    }

    /** One finding for each limit that it fails. */
    static List<Finding> of(WireTask task, GaugeAnswer thickest) {
        NoGaugeFindings why = new NoGaugeFindings(task, thickest);
        return thickest.fails().stream().map(why::finding).toList();
    }

    private Finding finding(Shortfall fail) {
        return switch (fail) {
            case RUNAWAY -> runaway();
            case TEMPERATURE -> temperature();
            case PEAK -> peak();
            case DROP -> drop();
            case CONNECTOR -> connector();
        };
    }

    private Finding runaway() {
        double currentA = task.run().currentA();
        return stop(
                "no-gauge-settles",
                WiringPart.CURRENT,
                currentA,
                thickest.ampacityA(),
                text(
                        "%s settles below the melting point of copper at %.4g A (it carries %.3g A at its rating): use"
                                + " more strands in parallel, or lead the wire through open air.",
                        sizes, currentA, thickest.ampacityA()));
    }

    private Finding temperature() {
        double settledC = celsius(thickest.conductorTemperatureK().orElseThrow());
        double limitC = celsius(task.temperatureLimitK());
        return stop(
                "no-gauge-stays-cool",
                WiringPart.CURRENT,
                settledC,
                limitC,
                text(
                        "%s stays below %.0f °C at %.4g A: it settles at %.0f °C; use more strands in parallel,"
                                + " insulation for a higher temperature, or a cooler place.",
                        sizes, limitC, task.run().currentA(), settledC));
    }

    private Finding peak() {
        double reachedC = celsius(thickest.peakTemperatureK().orElse(Copper.MELTING_POINT_K));
        double ratingC = celsius(task.insulation().ratingTemperatureK());
        return stop(
                "no-gauge-stands-the-peak",
                WiringPart.PEAK_CURRENT,
                reachedC,
                ratingC,
                text(
                        "%s stands the peak: it reaches %.0f °C, and its insulation is rated for %.0f °C; shorten or"
                                + " lower the peak, or use more strands in parallel.",
                        sizes, reachedC, ratingC));
    }

    private Finding drop() {
        double percent = Share.percentFromFraction(thickest.totalDropFraction());
        double limitPercent = Share.percentFromFraction(task.maxDropFraction());
        return stop(
                "no-gauge-keeps-the-drop",
                WiringPart.MAX_DROP,
                percent,
                limitPercent,
                text(
                        "%s keeps the drop below %.3g %%: it loses %.3g %%, connectors included; shorten the run, use"
                                + " more strands in parallel, better connectors or a higher supply voltage.",
                        sizes, limitPercent, percent));
    }

    private Finding connector() {
        double currentA = task.run().currentA();
        double leastRatedA = task.run().connectors().stream()
                .mapToDouble(Connector::ratedCurrentA)
                .min()
                .orElse(currentA);
        return stop(
                "no-gauge-helps-the-connectors",
                WiringPart.CURRENT,
                currentA,
                leastRatedA,
                text(
                        "%s helps while a connector rated for %.4g A carries %.4g A: use larger" + " connectors.",
                        sizes, leastRatedA, currentA));
    }

    private static Finding stop(String code, WiringPart part, double value, double limit, String message) {
        return Finding.of(Severity.STOP, code, Subject.of(part), value, limit, message);
    }
}
