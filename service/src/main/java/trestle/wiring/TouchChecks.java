package trestle.wiring;

import static trestle.finding.Digits.significant;
import static trestle.units.Temperature.cFromK;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Time;

/** The checks of what the wire touches. */
final class TouchChecks {
    /** Cooler than the most delicate thing of the table, a wire may touch anything. */
    private static final double HARMLESS_K = Arrays.stream(ContactMaterial.values())
            .mapToDouble(ContactMaterial::limitK)
            .min()
            .orElseThrow();

    private final Judged judged;
    private final WireTask task;
    private final GaugeAnswer answer;

    private TouchChecks(Judged judged) {
        this.judged = judged;
        this.task = judged.task();
        this.answer = judged.answer();
    }

    static void judge(Judged judged, Judge judge) {
        TouchChecks checks = new TouchChecks(judged);
        Subject touches = Subject.of(WiringPart.TOUCHES);
        judge.essential("wire-surface", "surface against what it touches", touches, checks::surface);
        judge.check("wire-skin", "surface against skin", touches, checks::skin);
    }

    /** Whether a gauge keeps a margin to all that it touches. */
    static boolean leavesMargin(WireTask task, GaugeAnswer answer) {
        return answer.runsAway()
                || Touch.worst(
                                task.touches().orElse(List.of()),
                                answer.surfaceTemperatureK().orElseThrow(),
                                answer.conductorTemperatureK().orElseThrow())
                        .filter(touch -> touch.excessK() > -Touch.NEAR_K)
                        .isEmpty();
    }

    private void surface(Trial trial) {
        if (answer.runsAway()) {
            trial.of(cFromK(Copper.MELTING_POINT_K), "°C").asSaid(true, Severity.STOP);
            return;
        }
        if (task.touches().isEmpty()) {
            unknown(trial);
            return;
        }
        Optional<Touch> steady = worst(answer.surfaceTemperatureK(), answer.conductorTemperatureK());
        Optional<Touch> peak = worst(answer.peakSurfaceTemperatureK(), answer.peakTemperatureK());
        if (steady.isEmpty()) {
            return;
        }
        boolean peaking = peak.filter(p -> p.excessK() > Touch.PEAK_ALLOWANCE_K
                        && p.excessK() - Touch.PEAK_ALLOWANCE_K > steady.get().excessK())
                .isPresent();
        if (peaking) {
            softens(peak.get(), Touch.PEAK_ALLOWANCE_K, " at the end of the peak", trial);
        } else {
            softens(steady.get(), 0, "", trial);
            warms(steady.get(), trial);
        }
    }

    /** Cooler than anything minds; else not to be judged. */
    private void unknown(Trial trial) {
        double surfaceK = Math.max(
                answer.surfaceTemperatureK().orElseThrow(),
                answer.peakSurfaceTemperatureK().orElse(0) - Touch.PEAK_ALLOWANCE_K);
        trial.of(cFromK(surfaceK), "°C").atMost(cFromK(HARMLESS_K), tables());
        if (surfaceK > HARMLESS_K) {
            trial.notJudged(Subject.of(WiringPart.TOUCHES));
        }
    }

    private Optional<Touch> worst(OptionalDouble surfaceK, OptionalDouble conductorK) {
        return surfaceK.isPresent() && conductorK.isPresent()
                ? Touch.worst(task.touches().orElseThrow(), surfaceK.getAsDouble(), conductorK.getAsDouble())
                : Optional.empty();
    }

    private void softens(Touch touch, double allowanceK, String when, Trial trial) {
        double temperatureC = cFromK(touch.temperatureK());
        double limitC = cFromK(touch.material().limitK());
        trial.of(temperatureC, "°C")
                .atMost(limitC + allowanceK, basis(touch))
                .stop(
                        "melts-what-it-touches",
                        "At %s A %s is %s °C at its %s%s, and %s stands %.0f °C%s: %s.",
                        significant(
                                when.isEmpty()
                                        ? task.run().currentA()
                                        : task.run().peak().orElseThrow().currentA(),
                                4),
                        judged.lastResort() ? "even the largest size, " + judged.label() + "," : judged.label(),
                        Digits.beside(temperatureC, limitC, 0),
                        where(touch),
                        when,
                        touch.material().words(),
                        limitC,
                        allowanceK > 0 ? ", 20 °C more for a short peak (common practice)" : "",
                        remedies(touch));
    }

    private void warms(Touch touch, Trial trial) {
        double temperatureC = cFromK(touch.temperatureK());
        double limitC = cFromK(touch.material().limitK());
        trial.atMost(limitC - Touch.NEAR_K, Basis.COMMON_PRACTICE)
                .attention(
                        "warms-what-it-touches",
                        "%s is %s °C at its %s, within 10 °C (common practice) of the %.0f °C that %s stands: %s.",
                        judged.who(),
                        Digits.beside(temperatureC, limitC, 0),
                        where(touch),
                        limitC,
                        touch.material().words(),
                        remedies(touch));
    }

    /** A thicker wire, less current, air about it: each solved for. */
    private String remedies(Touch touch) {
        List<String> ways = new ArrayList<>();
        ways.add(judged.instead("use parallel wires"));
        double currentA = currentA(touch);
        if (currentA > 0) {
            ways.add(Judge.text(
                    currentA < 10 ? "or carry no more than %.1f A" : "or carry no more than %.0f A",
                    currentA < 10 ? Math.floor(10 * currentA) / 10 : Math.floor(currentA)));
        }
        if (task.surroundings().enclosure() == Enclosure.FOAM_CHANNEL) {
            air(touch).ifPresent(ways::add);
        }
        return String.join(", ", ways);
    }

    /** Current of the run that holds what touches it at its limit. */
    private double currentA(Touch touch) {
        HeatPath path = task.path(answer.wire());
        double limitK = touch.material().limitK();
        double wireA = touch.material().side() == ContactMaterial.Side.SURFACE
                ? SteadyState.currentAtSurfaceA(answer.wire(), path, limitK)
                : SteadyState.currentA(answer.wire(), path, limitK);
        return wireA * task.run().parallelWires();
    }

    private Optional<String> air(Touch touch) {
        HeatPath bay = new HeatPath(answer.wire(), task.effectiveSurroundings().inStillBay());
        return SteadyState.of(answer.wire(), bay, task.run().wireCurrentA())
                .filter(state -> state.surfaceK() <= touch.material().limitK())
                .map(state -> Judge.text(
                        "or leave air all round it (then %.0f °C at its surface)", cFromK(state.surfaceK())));
    }

    private void skin(Trial trial) {
        List<ContactMaterial> touches = task.touches().orElse(List.of());
        if (!touches.contains(ContactMaterial.SKIN) || answer.runsAway()) {
            trial.notJudged(Subject.of(WiringPart.TOUCHES));
            return;
        }
        double surfaceC = cFromK(answer.surfaceTemperatureK().orElseThrow());
        double limitC = cFromK(ContactMaterial.SKIN.limitK());
        trial.of(surfaceC, "°C")
                .atMost(limitC, Basis.source(ContactMaterial.SKIN.source()))
                .attention(
                        "too-hot-to-touch",
                        "%s is %s °C at its surface, and skin is burnt within a minute above %.0f °C (ISO 13732-1, from"
                                + " memory): %s.",
                        judged.who(),
                        Digits.beside(surfaceC, limitC, 0),
                        limitC,
                        waiting());
    }

    /** How long it takes to cool, without current, from its steady state. */
    private String waiting() {
        HeatPath path = task.path(answer.wire());
        SteadyState from = new SteadyState(
                answer.surfaceTemperatureK().orElseThrow(),
                answer.conductorTemperatureK().orElseThrow());
        OptionalDouble waitS = Cooling.timeS(answer.wire(), path, from, ContactMaterial.SKIN.limitK());
        return waitS.isPresent()
                ? Judge.text("wait %.0f min after landing", Math.ceil(Time.minFromS(waitS.getAsDouble())))
                : "its surroundings are too warm for it to cool that far";
    }

    private static String where(Touch touch) {
        return touch.material().side() == ContactMaterial.Side.SURFACE ? "surface" : "conductor";
    }

    private static Basis basis(Touch touch) {
        return Basis.source(touch.material().source());
    }

    private static Basis tables() {
        return Basis.source("the lowest limit of the reference table contact-temperatures");
    }
}
