package trestle.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One gauge put to a task. */
final class GaugeTrial {
    private final WireTask task;
    private final WireRun run;
    private final Wire wire;
    private final HeatPath path;
    private final Optional<SteadyState> steady;
    private final Optional<PeakEnd> peak;

    GaugeTrial(WireTask task, Wire wire) {
        this.task = task;
        this.run = task.run();
        this.wire = wire;
        this.path = task.path(wire);
        this.steady = SteadyState.of(wire, path, run.wireCurrentA());
        this.peak = steady.flatMap(from -> run.peak()
                .flatMap(p -> PeakRise.end(wire, path, from, p.currentA() / run.parallelWires(), p.durationS())));
    }

    GaugeAnswer answer() {
        double resistanceOhm = run.wireResistanceOhm(wire, copperK());
        double dropV = run.currentA() * resistanceOhm;
        double totalDropV = dropV + run.currentA() * run.connectorResistanceOhm();
        double lossW = run.currentA() * dropV;
        double massKg = run.wireLengthM() * wire.massKgPerM();
        double ratingK = task.insulation().ratingTemperatureK();
        OptionalDouble peakDropV =
                run.peak().stream().mapToDouble(this::peakDropV).findFirst();
        return new GaugeAnswer(
                wire,
                resistanceOhm,
                dropV,
                totalDropV,
                totalDropV / run.supplyVoltageV(),
                peakDropV,
                peakDropV.stream().map(v -> v / run.supplyVoltageV()).findFirst(),
                lossW,
                steady.stream().mapToDouble(SteadyState::conductorK).findFirst(),
                steady.stream().mapToDouble(SteadyState::surfaceK).findFirst(),
                peak.stream().mapToDouble(PeakEnd::conductorK).findFirst(),
                peak.stream().mapToDouble(PeakEnd::surfaceK).findFirst(),
                run.parallelWires() * SteadyState.currentA(wire, path, ratingK),
                massKg,
                task.flight().stream()
                        .mapToDouble(f -> f.energyCostJ(lossW, massKg))
                        .findFirst(),
                fails(totalDropV, peakDropV));
    }

    private double copperK() {
        return steady.map(SteadyState::conductorK).orElse(Copper.MELTING_POINT_K);
    }

    /** At the end of the peak, when the copper is warmest. */
    private double peakDropV(CurrentPeak at) {
        double conductorK = peak.map(PeakEnd::conductorK).orElse(Copper.MELTING_POINT_K);
        return at.currentA() * (run.wireResistanceOhm(wire, conductorK) + run.connectorResistanceOhm());
    }

    private List<Shortfall> fails(double totalDropV, OptionalDouble peakDropV) {
        List<Shortfall> fails = new ArrayList<>();
        double ratingK = task.insulation().ratingTemperatureK();
        if (steady.isEmpty()) {
            fails.add(Shortfall.RUNAWAY);
        } else {
            if (steady.get().conductorK() > task.temperatureLimitK()) {
                fails.add(Shortfall.TEMPERATURE);
            }
            double peakK = peak.map(PeakEnd::conductorK).orElse(Copper.MELTING_POINT_K);
            if (run.peak().isPresent() && peakK > ratingK) {
                fails.add(Shortfall.PEAK);
            }
            if (softensWhatItTouches()) {
                fails.add(Shortfall.SURFACE);
            }
        }
        if (totalDropV / run.supplyVoltageV() > task.drops().continuousFraction()) {
            fails.add(Shortfall.DROP);
        }
        if (peakDropV.orElse(0) / run.supplyVoltageV() > task.drops().peakFraction()) {
            fails.add(Shortfall.PEAK_DROP);
        }
        if (run.connectors().stream().anyMatch(c -> run.currentA() > c.ratedCurrentA())) {
            fails.add(Shortfall.CONNECTOR);
        }
        return fails;
    }

    private boolean softensWhatItTouches() {
        List<ContactMaterial> touches = task.touches().orElse(List.of());
        boolean settled = steady.flatMap(s -> Touch.worst(touches, s.surfaceK(), s.conductorK()))
                .filter(touch -> touch.excessK() > 0)
                .isPresent();
        boolean peaking = peak.flatMap(p -> Touch.worst(touches, p.surfaceK(), p.conductorK()))
                .filter(touch -> touch.excessK() > Touch.PEAK_ALLOWANCE_K)
                .isPresent();
        return settled || peaking;
    }
}
