package trestle.wiring;

import static trestle.units.Temperature.cFromK;

import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Mass;
import trestle.units.Share;

/** The checks of the gauge that the run will have: the one asked about, else the recommended one. */
final class GaugeChecks {
    /** A saving below this is not worth a sentence, g. */
    private static final double LEAST_SAVING_G = 1;

    private final WireTask task;
    private final Optional<GaugeAnswer> chosen;
    private final String label;

    private GaugeChecks(WireTask task, Optional<GaugeAnswer> chosen) {
        this.task = task;
        this.chosen = chosen;
        this.label = chosen.map(a -> a.gauge().label()).orElse("");
    }

    static void judge(WireTask task, Optional<GaugeAnswer> checked, Optional<GaugeAnswer> recommended, Judge judge) {
        GaugeChecks checks = new GaugeChecks(task, checked.or(() -> recommended));
        Subject gauge = Subject.of(WiringPart.GAUGE);
        judge.essential("wire-temperature", "conductor against its insulation", gauge, checks.of(checks::temperature));
        judge.check(
                "wire-peak",
                "conductor against its insulation in the peak",
                Subject.of(WiringPart.PEAK_CURRENT),
                checks.of(checks::peak));
        judge.essential(
                "wire-drop", "drop over wire and connectors", Subject.of(WiringPart.MAX_DROP), checks.of(checks::drop));
        checked.filter(GaugeAnswer::meets)
                .ifPresent(answer -> recommended.ifPresent(lighter -> checks.lighter(answer, lighter, judge)));
    }

    private java.util.function.Consumer<Trial> of(java.util.function.BiConsumer<GaugeAnswer, Trial> check) {
        return trial -> chosen.ifPresentOrElse(
                answer -> check.accept(answer, trial), () -> trial.notJudged(Subject.of(WiringPart.GAUGE)));
    }

    private void temperature(GaugeAnswer answer, Trial trial) {
        double currentA = task.run().currentA();
        if (answer.conductorTemperatureK().isEmpty()) {
            trial.of(currentA, "A")
                    .atMost(answer.ampacityA(), Basis.COMPUTED)
                    .stopIf(
                            true,
                            "wire-runaway",
                            "%s does not settle below the melting point of copper at %.4g A: it carries %.3g A at the"
                                    + " rating of its insulation.",
                            label,
                            currentA,
                            answer.ampacityA());
            return;
        }
        double settledC = cFromK(answer.conductorTemperatureK().getAsDouble());
        double ratingC = cFromK(task.insulation().ratingTemperatureK());
        double limitC = cFromK(task.temperatureLimitK());
        trial.of(settledC, "°C")
                .atMost(ratingC, Basis.REQUEST)
                .stop(
                        "wire-too-hot",
                        "%s settles at %.0f °C, above the %.0f °C that its insulation is rated for: it carries %.3g A"
                                + " there.",
                        label,
                        settledC,
                        ratingC,
                        answer.ampacityA())
                .atMost(limitC, Basis.COMMON_PRACTICE)
                .attention(
                        "wire-hot",
                        "%s settles at %.1f °C, and %.0f °C would leave 10 °C to the rating of its insulation.",
                        label,
                        settledC,
                        limitC);
    }

    private void peak(GaugeAnswer answer, Trial trial) {
        if (task.run().peak().isEmpty() || answer.conductorTemperatureK().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.PEAK_CURRENT));
            return;
        }
        double reachedC = cFromK(answer.peakTemperatureK().orElse(Copper.MELTING_POINT_K));
        double ratingC = cFromK(task.insulation().ratingTemperatureK());
        trial.of(reachedC, "°C")
                .atMost(ratingC, Basis.REQUEST)
                .stopIf(
                        answer.fails().contains(Shortfall.PEAK),
                        "wire-too-hot-in-peak",
                        answer.meltsInPeak()
                                ? "%s melts in the peak, at %.0f °C; its insulation is rated for %.0f °C."
                                : "%s reaches %.0f °C in the peak; its insulation is rated for %.0f °C.",
                        label,
                        reachedC,
                        ratingC);
    }

    private void drop(GaugeAnswer answer, Trial trial) {
        double supplyV = task.run().supplyVoltageV();
        if (answer.totalDropFraction() >= 1) {
            trial.at(Subject.of(WiringPart.SUPPLY_VOLTAGE))
                    .of(answer.totalDropV(), "V")
                    .atMost(supplyV, Basis.REQUEST)
                    .stopIf(
                            true,
                            "drop-above-supply",
                            "%s would drop %.4g V of a supply of %.4g V: this current cannot flow.",
                            label,
                            answer.totalDropV(),
                            supplyV);
            return;
        }
        double percent = Share.percentFromFraction(answer.totalDropFraction());
        double limitPercent = Share.percentFromFraction(task.maxDropFraction());
        trial.of(percent, "%")
                .atMost(limitPercent, Basis.REQUEST)
                .attentionIf(
                        answer.fails().contains(Shortfall.DROP),
                        "drop-above-limit",
                        "%s drops %.3g %% of the supply, connectors included; the limit is %.3g %%.",
                        label,
                        percent,
                        limitPercent);
    }

    private void lighter(GaugeAnswer answer, GaugeAnswer recommended, Judge judge) {
        double massG = Mass.gFromKg(answer.massKg());
        double lighterG = Mass.gFromKg(recommended.massKg());
        judge.check(
                "wire-mass",
                "mass of the wire",
                Subject.of(WiringPart.GAUGE),
                trial -> trial.of(massG, "g")
                        .atMost(lighterG, Basis.COMPUTED)
                        .noteIf(
                                massG - lighterG > LEAST_SAVING_G,
                                "lighter-gauge-meets",
                                "%s meets every limit too, and weighs %.3g g instead of %.3g g.",
                                recommended.gauge().label(),
                                lighterG,
                                massG));
    }
}
