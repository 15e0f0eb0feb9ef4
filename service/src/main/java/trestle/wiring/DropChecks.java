package trestle.wiring;

import static trestle.finding.Digits.significant;

import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Share;

/** The checks of the drop over wire and connectors, all the time and in the peak. */
final class DropChecks {
    private static final String LESS =
            "shorten the run, use parallel wires, better connectors or a higher supply voltage";

    private final Judged judged;
    private final WireTask task;
    private final GaugeAnswer answer;

    private DropChecks(Judged judged) {
        this.judged = judged;
        this.task = judged.task();
        this.answer = judged.answer();
    }

    static void judge(Judged judged, Judge judge) {
        DropChecks checks = new DropChecks(judged);
        judge.essential(
                "wire-drop", "drop over wire and connectors", Subject.of(WiringPart.MAX_DROP), checks::continuous);
        judge.essential(
                "wire-drop-peak",
                "drop over wire and connectors in the peak",
                Subject.of(WiringPart.MAX_PEAK_DROP),
                checks::peak);
    }

    private void continuous(Trial trial) {
        DropLimits drops = task.drops();
        drop(
                trial,
                task.run().currentA(),
                answer.totalDropV(),
                drops.continuousFraction(),
                drops.continuousBasis(),
                Shortfall.DROP);
    }

    private void peak(Trial trial) {
        if (task.run().peak().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.PEAK_CURRENT));
            return;
        }
        DropLimits drops = task.drops();
        trial.asSaid(answer.totalDropFraction() >= 1, Severity.STOP);
        drop(
                trial,
                task.run().peak().get().currentA(),
                answer.peakDropV().orElseThrow(),
                drops.peakFraction(),
                drops.peakBasis(),
                Shortfall.PEAK_DROP);
    }

    private void drop(
            Trial trial, double currentA, double dropV, double limitFraction, Basis basis, Shortfall shortfall) {
        double supplyV = task.run().supplyVoltageV();
        double percent = Share.percentFromFraction(dropV / supplyV);
        double limitPercent = Share.percentFromFraction(limitFraction);
        boolean peak = shortfall == Shortfall.PEAK_DROP;
        boolean fails = answer.fails().contains(shortfall);
        String sentence = "%s drops %s V at " + (peak ? "the peak of " : "")
                + "%s A, connectors included: %s %% of %s V, over the limit of %s %%%s; %s.";
        Object[] values = {
            judged.who(),
            significant(dropV, 3),
            significant(currentA, 4),
            Digits.beside(percent, limitPercent, 1),
            significant(supplyV, 4),
            Digits.beside(limitPercent, percent, 1),
            from(basis),
            judged.lastResort() ? LESS : judged.instead(LESS)
        };
        trial.of(percent, "%")
                .atMost(limitPercent, basis)
                .asSaid(answer.runsAway(), Severity.STOP)
                .stopIf(
                        judged.lastResort() && fails,
                        peak ? "no-gauge-keeps-the-peak-drop" : "no-gauge-keeps-the-drop",
                        sentence,
                        values)
                .stopIf(
                        fails && dropV >= supplyV,
                        "drop-above-supply",
                        "%s would drop %s V of a supply of %s V at %s A, so this current cannot flow: %s.",
                        judged.who(),
                        significant(dropV, 4),
                        significant(supplyV, 4),
                        significant(currentA, 4),
                        judged.instead(LESS))
                .attentionIf(fails, peak ? "peak-drop-above-limit" : "drop-above-limit", sentence, values);
    }

    private static String from(Basis basis) {
        return basis.equals(Basis.REQUEST) ? "" : " (" + basis.said().replace(", no source", "") + ")";
    }
}
