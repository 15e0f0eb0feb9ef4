package trestle.wiring;

import static trestle.finding.Digits.significant;

import java.util.List;
import java.util.Optional;
import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** The checks of a fuse: that one fits, and that the one in the run holds, protects and breaks. */
final class FuseChecks {
    private static final Basis TIMES = Basis.source("ISO 8820-3, times to open, from memory");

    /** A full lithium pack over its nominal voltage, at most: 4.2 V over 3.6 V, and some. Common practice, no source. */
    private static final double FULL_OVER_NOMINAL = 1.25;

    private static final String NO_ROOM =
            "A fuse that holds this current is rated %s A or more, and %s with its %s A allows at most %s A: %s.";

    private static final String NO_RATING = "A fuse that holds this current is rated %s A or more, and %s with its %s A"
            + " allows at most %s A, and no usual rating lies between: %s.";

    private final Fuse fuse;
    private final WireRun run;
    private final PlugEnd plug;
    private final GaugeAnswer answer;
    private final FuseWindow window;
    private final Optional<GaugeAnswer> thinnest;

    private FuseChecks(Fuse fuse, WireTask task, GaugeAnswer answer, List<GaugeAnswer> candidates) {
        this.fuse = fuse;
        this.run = task.run();
        this.plug = task.plug();
        this.answer = answer;
        this.window = FuseWindow.of(run, answer.ampacityA());
        this.thinnest = FuseWindow.thinnest(run, candidates);
    }

    /**
     * Judges the fuse of a run, where one is asked about.
     *
     * @param task what the wire is for
     * @param chosen the wire that the run is built with; empty where no size meets the task
     * @param candidates sizes on offer, thinnest first
     * @param judge what is judged
     */
    static void judge(WireTask task, Optional<GaugeAnswer> chosen, List<GaugeAnswer> candidates, Judge judge) {
        if (task.fuse().isEmpty() || chosen.isEmpty()) {
            return;
        }
        FuseChecks checks = new FuseChecks(task.fuse().get(), task, chosen.get(), candidates);
        judge.essential("fuse-window", "room for a fuse", Subject.of(WiringPart.FUSE), checks::fits);
        if (task.fuse().get().ratedCurrentA().isPresent()) {
            checks.given(judge);
        }
    }

    private void given(Judge judge) {
        Subject rating = Subject.of(WiringPart.FUSE_RATING);
        judge.essential("fuse-protects", "fuse against the wire", rating, this::protects);
        judge.essential("fuse-holds", "fuse against the current", rating, this::holds);
        judge.essential("fuse-voltage", "fuse against the voltage", Subject.of(WiringPart.FUSE_VOLTAGE), this::voltage);
        judge.essential(
                "fuse-breaks", "fuse against a short circuit", Subject.of(WiringPart.FUSE_BREAKING), this::breaks);
    }

    private void fits(Trial trial) {
        trial.of(window.leastA(), "A")
                .atMost(window.greatestA(), TIMES)
                .attentionIf(
                        window.recommendedA().isEmpty(),
                        "no-fuse-fits",
                        window.leastA() > window.greatestA() ? NO_ROOM : NO_RATING,
                        significant(window.leastA(), 3),
                        answer.gauge().label(),
                        significant(answer.ampacityA(), 3),
                        significant(window.greatestA(), 3),
                        thinnest.map(other -> "use " + other.gauge().label())
                                .orElse("no size on offer has room for one"));
    }

    private void protects(Trial trial) {
        double ratedA = fuse.ratedCurrentA().orElseThrow();
        trial.of(ratedA, "A")
                .atMost(window.greatestA(), TIMES)
                .stop(
                        "fuse-too-large",
                        "The fuse of %s A may carry %s A for ten minutes, and %s only %s A: take one of %s A or less.",
                        significant(ratedA, 4),
                        significant(FuseWindow.OPENS_AT * ratedA, 3),
                        answer.gauge().label(),
                        significant(answer.ampacityA(), 3),
                        significant(window.greatestA(), 3));
    }

    private void holds(Trial trial) {
        double ratedA = fuse.ratedCurrentA().orElseThrow();
        trial.of(ratedA, "A")
                .atLeast(window.leastA(), TIMES)
                .attention(
                        "fuse-too-small",
                        "The fuse of %s A may open in flight: %s A for good%s want one of %s A or more.",
                        significant(ratedA, 4),
                        significant(run.currentA(), 3),
                        run.peak()
                                .map(peak -> " and " + significant(peak.currentA(), 3) + " A for "
                                        + significant(peak.durationS(), 3) + " s")
                                .orElse(""),
                        significant(window.leastA(), 3));
    }

    private void voltage(Trial trial) {
        if (fuse.ratedVoltageV().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.FUSE_VOLTAGE));
            return;
        }
        double ratedV = fuse.ratedVoltageV().getAsDouble();
        double supplyV = plug.fullVoltageV().orElse(run.supplyVoltageV());
        boolean mayBeShort = plug.fullVoltageV().isEmpty() && ratedV < FULL_OVER_NOMINAL * supplyV;
        if (ratedV >= supplyV && mayBeShort) {
            trial.notJudged(Subject.of(WiringPart.FULL_VOLTAGE));
            return;
        }
        trial.of(ratedV, "V")
                .atLeast(supplyV, Basis.REQUEST)
                .stop(
                        "fuse-voltage-short",
                        "The fuse may break %s V and the supply has %s V: its arc would not go out; take one rated for"
                                + " the full pack.",
                        significant(ratedV, 4),
                        significant(supplyV, 4));
    }

    private void breaks(Trial trial) {
        if (fuse.breakingCurrentA().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.FUSE_BREAKING));
            return;
        }
        if (plug.sourceResistanceOhm().isEmpty()) {
            trial.notJudged(Subject.of(WiringPart.SOURCE_RESISTANCE));
            return;
        }
        double breakingA = fuse.breakingCurrentA().getAsDouble();
        double shortA = plug.shortCircuitA(run.supplyVoltageV()).orElseThrow();
        trial.of(breakingA, "A")
                .atLeast(shortA, Basis.COMPUTED)
                .stop(
                        "fuse-cannot-break",
                        "A short right behind the fuse takes %s A, and the fuse can break %s A: take one that breaks"
                                + " more.",
                        significant(shortA, 3),
                        significant(breakingA, 4));
    }
}
