package trestle.wiring;

import static trestle.finding.Digits.significant;
import static trestle.units.Temperature.cFromK;

import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of the copper: against its insulation, all the time and in the peak. */
final class HeatChecks {
    private static final Basis RATING = Basis.source("the rating of the insulation");
    private static final String COOLER = "use parallel wires, insulation for a higher temperature, or a cooler place";

    private final Judged judged;
    private final WireTask task;
    private final GaugeAnswer answer;
    private final double ratingC;

    private HeatChecks(Judged judged) {
        this.judged = judged;
        this.task = judged.task();
        this.answer = judged.answer();
        this.ratingC = cFromK(task.insulation().ratingTemperatureK());
    }

    static void judge(Judged judged, Judge judge) {
        HeatChecks checks = new HeatChecks(judged);
        judge.essential(
                "wire-temperature",
                "conductor against its insulation",
                Subject.of(judged.asked() ? WiringPart.GAUGE : WiringPart.CURRENT),
                checks::steady);
        judge.check(
                "wire-peak",
                "conductor against its insulation in the peak",
                Subject.of(WiringPart.PEAK_CURRENT),
                checks::peak);
    }

    private void steady(Trial trial) {
        if (answer.runsAway()) {
            runaway(trial);
            return;
        }
        double settledC = cFromK(answer.conductorTemperatureK().getAsDouble());
        double limitC = cFromK(task.temperatureLimitK());
        String hot = "%s settles at %s °C, above the %.0f °C that its insulation is rated for; it carries %s A: %s.";
        String close =
                "%s settles at %s °C, which leaves less than 10 °C (common practice) to the %.0f °C that its insulation"
                        + " is rated for: %s.";
        String settled = Digits.beside(settledC, ratingC, 0);
        trial.of(settledC, "°C")
                .atMost(ratingC, RATING)
                .stopIf(
                        judged.lastResort() && settledC > ratingC,
                        "no-gauge-stays-cool",
                        hot,
                        judged.who(),
                        settled,
                        ratingC,
                        significant(answer.ampacityA(), 3),
                        COOLER)
                .stop(
                        "wire-too-hot",
                        hot,
                        judged.who(),
                        settled,
                        ratingC,
                        significant(answer.ampacityA(), 3),
                        judged.instead(COOLER))
                .atMost(limitC, Basis.COMMON_PRACTICE)
                .stopIf(
                        judged.lastResort() && settledC > limitC,
                        "no-gauge-stays-cool",
                        close,
                        judged.who(),
                        Digits.beside(settledC, limitC, 0),
                        ratingC,
                        COOLER)
                .attention(
                        "wire-hot",
                        close,
                        judged.who(),
                        Digits.beside(settledC, limitC, 0),
                        ratingC,
                        judged.instead(COOLER));
    }

    private void runaway(Trial trial) {
        double currentA = task.run().currentA();
        String sentence = "%s overheats without reaching a steady temperature at %s A; its insulation is at its rated"
                + " %.0f °C with %s A: %s.";
        trial.of(currentA, "A")
                .atMost(answer.ampacityA(), Basis.COMPUTED)
                .stopIf(
                        judged.lastResort(),
                        "no-gauge-settles",
                        sentence,
                        judged.who(),
                        significant(currentA, 4),
                        ratingC,
                        significant(answer.ampacityA(), 3),
                        COOLER)
                .stopIf(
                        true,
                        "wire-runaway",
                        sentence,
                        judged.who(),
                        significant(currentA, 4),
                        ratingC,
                        significant(answer.ampacityA(), 3),
                        judged.instead(COOLER));
    }

    private void peak(Trial trial) {
        if (task.run().peak().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.PEAK_CURRENT));
            return;
        }
        CurrentPeak peak = task.run().peak().get();
        double reachedC = cFromK(answer.peakTemperatureK().orElse(Copper.MELTING_POINT_K));
        String remedy = "shorten or lower the peak, or use parallel wires";
        String sentence = "%s " + (answer.meltsInPeak() ? "melts, at %s °C," : "reaches %s °C")
                + " in the peak of %s A for %s s; its insulation is rated for %.0f °C: %s.";
        trial.of(reachedC, "°C")
                .atMost(ratingC, RATING)
                .asSaid(answer.runsAway(), Severity.STOP)
                .stopIf(
                        judged.lastResort() && answer.fails().contains(Shortfall.PEAK),
                        "no-gauge-stands-the-peak",
                        sentence,
                        judged.who(),
                        Digits.beside(reachedC, ratingC, 0),
                        significant(peak.currentA(), 4),
                        significant(peak.durationS(), 3),
                        ratingC,
                        remedy)
                .stopIf(
                        answer.fails().contains(Shortfall.PEAK),
                        "wire-too-hot-in-peak",
                        sentence,
                        judged.who(),
                        Digits.beside(reachedC, ratingC, 0),
                        significant(peak.currentA(), 4),
                        significant(peak.durationS(), 3),
                        ratingC,
                        judged.instead(remedy));
    }
}
