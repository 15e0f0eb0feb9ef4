package trestle.wiring;

import static trestle.units.Temperature.cFromK;

import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;

/** Whether any size on offer meets a task, limit by limit; where none does, how far the thickest is from it. */
final class OfferChecks {
    private final WireTask task;
    private final GaugeAnswer best;
    private final List<Shortfall> fails;
    private final String sizes;

    private OfferChecks(WireTask task, GaugeAnswer best) {
        this.task = task;
        this.best = best;
        this.fails = best.fails();
        this.sizes = "No size up to " + best.gauge().label();
    }

    static void judge(WireTask task, List<GaugeAnswer> candidates, Optional<GaugeAnswer> recommended, Judge judge) {
        GaugeAnswer best = recommended.orElseGet(() -> candidates.get(candidates.size() - 1));
        OfferChecks checks = new OfferChecks(task, best);
        judge.check(
                "offered-temperature",
                "a size on offer that stays cool enough",
                Subject.of(WiringPart.CURRENT),
                checks::temperature);
        judge.check(
                "offered-peak",
                "a size on offer that withstands the peak",
                Subject.of(WiringPart.PEAK_CURRENT),
                checks::peak);
        judge.check(
                "offered-drop", "a size on offer that keeps the drop", Subject.of(WiringPart.MAX_DROP), checks::drop);
        judge.check(
                "offered-connectors",
                "a size on offer for the connectors",
                Subject.of(WiringPart.CURRENT),
                checks::connectors);
    }

    private void temperature(Trial trial) {
        double currentA = task.run().currentA();
        if (fails.contains(Shortfall.RUNAWAY)) {
            trial.of(currentA, "A")
                    .atMost(best.ampacityA(), Basis.COMPUTED)
                    .stopIf(
                            true,
                            "no-gauge-settles",
                            "%s settles below the melting point of copper at %.4g A (it carries %.3g A at its rating):"
                                    + " use more strands in parallel, or lead the wire through open air.",
                            sizes,
                            currentA,
                            best.ampacityA());
            return;
        }
        double settledC = cFromK(best.conductorTemperatureK().orElseThrow());
        double limitC = cFromK(task.temperatureLimitK());
        trial.of(settledC, "°C")
                .atMost(limitC, Basis.COMMON_PRACTICE)
                .stopIf(
                        fails.contains(Shortfall.TEMPERATURE),
                        "no-gauge-stays-cool",
                        "%s stays below %.0f °C at %.4g A: it settles at %.0f °C; use more strands in parallel,"
                                + " insulation for a higher temperature, or a cooler place.",
                        sizes,
                        limitC,
                        currentA,
                        settledC);
    }

    private void peak(Trial trial) {
        if (task.run().peak().isEmpty() || fails.contains(Shortfall.RUNAWAY)) {
            trial.notJudged(Subject.of(WiringPart.PEAK_CURRENT));
            return;
        }
        double reachedC = cFromK(best.peakTemperatureK().orElse(Copper.MELTING_POINT_K));
        double ratingC = cFromK(task.insulation().ratingTemperatureK());
        trial.of(reachedC, "°C")
                .atMost(ratingC, Basis.REQUEST)
                .stopIf(
                        fails.contains(Shortfall.PEAK),
                        "no-gauge-stands-the-peak",
                        "%s stands the peak: it reaches %.0f °C, and its insulation is rated for %.0f °C; shorten or"
                                + " lower the peak, or use more strands in parallel.",
                        sizes,
                        reachedC,
                        ratingC);
    }

    private void drop(Trial trial) {
        double percent = Share.percentFromFraction(best.totalDropFraction());
        double limitPercent = Share.percentFromFraction(task.maxDropFraction());
        trial.of(percent, "%")
                .atMost(limitPercent, Basis.REQUEST)
                .stopIf(
                        fails.contains(Shortfall.DROP),
                        "no-gauge-keeps-the-drop",
                        "%s keeps the drop below %.3g %%: it loses %.3g %%, connectors included; shorten the run, use"
                                + " more strands in parallel, better connectors or a higher supply voltage.",
                        sizes,
                        limitPercent,
                        percent);
    }

    private void connectors(Trial trial) {
        double currentA = task.run().currentA();
        double leastRatedA = task.run().connectors().stream()
                .mapToDouble(Connector::ratedCurrentA)
                .min()
                .orElse(currentA);
        trial.of(currentA, "A")
                .atMost(leastRatedA, Basis.REQUEST)
                .stopIf(
                        fails.contains(Shortfall.CONNECTOR),
                        "no-gauge-helps-the-connectors",
                        "%s helps while a connector rated for %.4g A carries %.4g A: use larger connectors.",
                        sizes,
                        leastRatedA,
                        currentA);
    }
}
