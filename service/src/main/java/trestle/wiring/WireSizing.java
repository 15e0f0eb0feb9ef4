package trestle.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Judge;
import trestle.finding.Judgement;

/**
 * The choice of a gauge for a run.
 *
 * @param candidates every size on offer, thinnest first
 * @param lightest the thinnest that meets the task; empty when none does
 * @param enduranceOptimal of those that meet it, the one with the least energy cost; empty when
 *     none does or without flight data
 * @param recommended the endurance-optimal one, without flight data the lightest, of those that leave a margin to what
 *     they touch, where there are such; empty when none meets the task
 * @param checked the gauge that was asked about, when there was one
 * @param connectorDropV drop in the connectors, V
 * @param connectorLossW heat made in the connectors, W
 * @param judgement what is to be said of it
 */
public record WireSizing(
        List<GaugeAnswer> candidates,
        Optional<GaugeAnswer> lightest,
        Optional<GaugeAnswer> enduranceOptimal,
        Optional<GaugeAnswer> recommended,
        Optional<GaugeAnswer> checked,
        double connectorDropV,
        double connectorLossW,
        Judgement judgement) {
    /** How far under its rating the insulation is kept, K. Common practice, no source. */
    public static final double TEMPERATURE_MARGIN_K = 10;

    /** Copies the list. */
    public WireSizing {
        candidates = List.copyOf(candidates);
    }

    /**
     * Judges every size on offer, and the one asked about, and chooses.
     *
     * @param task what the wire is for
     * @return the choice; without a recommendation, and with a finding that says why, when no size
     *     meets the task
     */
    public static WireSizing of(WireTask task) {
        List<GaugeAnswer> candidates = new ArrayList<>();
        for (Gauge gauge : WireGauges.offered(task.system())) {
            candidates.add(GaugeAnswer.of(task, gauge));
        }
        Optional<GaugeAnswer> lightest =
                candidates.stream().filter(GaugeAnswer::meets).findFirst();
        Optional<GaugeAnswer> enduranceOptimal = leastEnergy(task, candidates);
        List<GaugeAnswer> cool = candidates.stream()
                .filter(answer -> TouchChecks.leavesMargin(task, answer))
                .toList();
        Optional<GaugeAnswer> recommended = leastEnergy(task, cool)
                .or(() -> cool.stream().filter(GaugeAnswer::meets).findFirst())
                .or(() -> enduranceOptimal)
                .or(() -> lightest);
        Optional<GaugeAnswer> checked = task.checked().map(gauge -> GaugeAnswer.of(task, gauge));
        double connectorDropV = task.run().currentA() * task.run().connectorResistanceOhm();
        return new WireSizing(
                candidates,
                lightest,
                enduranceOptimal,
                recommended,
                checked,
                connectorDropV,
                task.run().currentA() * connectorDropV,
                judgement(task, candidates, recommended, checked));
    }

    private static Judgement judgement(
            WireTask task,
            List<GaugeAnswer> candidates,
            Optional<GaugeAnswer> recommended,
            Optional<GaugeAnswer> checked) {
        Judge judge = new Judge();
        Judged judged = Judged.of(task, candidates, recommended, checked);
        HeatChecks.judge(judged, judge);
        TouchChecks.judge(judged, judge);
        DropChecks.judge(judged, judge);
        RunChecks.judge(task.run(), judge);
        ConnectorHeatChecks.judge(task, judge);
        PlugChecks.judge(task, judge);
        FuseChecks.judge(task, checked.or(() -> recommended), candidates, judge);
        WireAssumptions.note(task, checked.or(() -> recommended), judge);
        return judge.judgement();
    }

    /** The first of equals is the thinnest. */
    private static Optional<GaugeAnswer> leastEnergy(WireTask task, List<GaugeAnswer> candidates) {
        return task.flight().isEmpty()
                ? Optional.empty()
                : candidates.stream()
                        .filter(GaugeAnswer::meets)
                        .min(Comparator.comparingDouble(a -> a.energyCostJ().orElseThrow()));
    }

    /**
     * The answer that the run will be built with: the gauge asked about, else the recommended one.
     *
     * @return empty when none was asked about and none meets the task
     */
    public Optional<GaugeAnswer> chosen() {
        return checked.or(() -> recommended);
    }

    /**
     * Between which ratings a fuse fits, with the chosen gauge.
     *
     * @param run the run that was sized
     * @return the window; empty when there is no chosen gauge
     */
    public Optional<FuseWindow> fuseWindow(WireRun run) {
        return chosen().map(answer -> FuseWindow.of(run, answer.ampacityA()));
    }

    /**
     * Drop of the whole run, connectors included, with the chosen gauge.
     *
     * @return drop, V; empty when there is no chosen gauge
     */
    public OptionalDouble totalDropV() {
        return chosen().stream().mapToDouble(GaugeAnswer::totalDropV).findFirst();
    }
}
