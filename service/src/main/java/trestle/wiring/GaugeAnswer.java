package trestle.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one gauge does on a task.
 *
 * @param wire the wire
 * @param resistanceOhm both ways, strands in parallel, at the conductor's temperature, Ω; at the
 *     melting point of copper where the wire does not settle
 * @param dropV drop in the wires, V
 * @param dropFraction drop in the wires over supply voltage
 * @param totalDropV drop with the connectors, V
 * @param totalDropFraction the same over supply voltage; what the limit is held against
 * @param lossW heat made in the wires, W
 * @param conductorTemperatureK where the copper settles, K; empty where it does not settle
 * @param peakTemperatureK at the end of the peak, K; empty where there is no peak or the copper
 *     melts in it
 * @param ampacityA current of the whole run (all strands) at which the copper settles at the
 *     insulation's rating in these surroundings, A; 0 where these are no cooler than the rating
 * @param massKg both ways, all strands, copper and insulation, kg
 * @param energyCostJ energy for its loss and its carriage, J; empty without flight data
 * @param fails why it does not meet the task; empty when it does
 */
public record GaugeAnswer(
        Wire wire,
        double resistanceOhm,
        double dropV,
        double dropFraction,
        double totalDropV,
        double totalDropFraction,
        double lossW,
        OptionalDouble conductorTemperatureK,
        OptionalDouble peakTemperatureK,
        double ampacityA,
        double massKg,
        OptionalDouble energyCostJ,
        List<Shortfall> fails) {
    /** Copies the list. */
    public GaugeAnswer {
        fails = List.copyOf(fails);
    }

    /**
     * Judges one gauge.
     *
     * @param task what it is for
     * @param gauge the conductor
     * @return how it does
     */
    public static GaugeAnswer of(WireTask task, Gauge gauge) {
        WireRun run = task.run();
        Wire wire = task.wire(gauge);
        HeatPath path = new HeatPath(wire, task.effectiveSurroundings());
        Optional<SteadyState> steady = SteadyState.of(wire, path, run.wireCurrentA());
        OptionalDouble peakK = peakTemperatureK(run, wire, path, steady);
        double copperK = steady.map(SteadyState::conductorK).orElse(Copper.MELTING_POINT_K);
        double resistanceOhm = run.wireResistanceOhm(wire, copperK);
        double dropV = run.currentA() * resistanceOhm;
        double totalDropV = dropV + run.currentA() * run.connectorResistanceOhm();
        double lossW = run.currentA() * dropV;
        double massKg = run.wireLengthM() * wire.massKgPerM();
        double totalDropFraction = totalDropV / run.supplyVoltageV();
        double ratingK = task.insulation().ratingTemperatureK();
        return new GaugeAnswer(
                wire,
                resistanceOhm,
                dropV,
                dropV / run.supplyVoltageV(),
                totalDropV,
                totalDropFraction,
                lossW,
                steady.isPresent() ? OptionalDouble.of(copperK) : OptionalDouble.empty(),
                peakK,
                run.strandsInParallel() * SteadyState.currentA(wire, path, ratingK),
                massKg,
                task.flight().isPresent()
                        ? OptionalDouble.of(task.flight().get().energyCostJ(lossW, massKg))
                        : OptionalDouble.empty(),
                fails(task, steady, peakK, totalDropFraction));
    }

    private static OptionalDouble peakTemperatureK(
            WireRun run, Wire wire, HeatPath path, Optional<SteadyState> steady) {
        if (run.peak().isEmpty() || steady.isEmpty()) {
            return OptionalDouble.empty();
        }
        CurrentPeak peak = run.peak().get();
        double wireCurrentA = peak.currentA() / run.strandsInParallel();
        return PeakRise.conductorK(wire, path, steady.get(), wireCurrentA, peak.durationS());
    }

    private static List<Shortfall> fails(
            WireTask task, Optional<SteadyState> steady, OptionalDouble peakK, double totalDropFraction) {
        List<Shortfall> fails = new ArrayList<>();
        if (steady.isEmpty()) {
            fails.add(Shortfall.RUNAWAY);
        } else {
            if (steady.get().conductorK() > task.temperatureLimitK()) {
                fails.add(Shortfall.TEMPERATURE);
            }
            boolean peakGiven = task.run().peak().isPresent();
            double ratingK = task.insulation().ratingTemperatureK();
            if (peakGiven && peakK.orElse(Copper.MELTING_POINT_K) > ratingK) {
                fails.add(Shortfall.PEAK);
            }
        }
        if (totalDropFraction > task.maxDropFraction()) {
            fails.add(Shortfall.DROP);
        }
        if (task.run().connectors().stream().anyMatch(c -> task.run().currentA() > c.ratedCurrentA())) {
            fails.add(Shortfall.CONNECTOR);
        }
        return fails;
    }

    /**
     * The conductor.
     *
     * @return its size
     */
    public Gauge gauge() {
        return wire.gauge();
    }

    /**
     * Whether it meets the task.
     *
     * @return true when nothing fails
     */
    public boolean meets() {
        return fails.isEmpty();
    }

    /**
     * Whether the copper melts in the peak.
     *
     * @return true when it settles under the continuous current, and melts in the peak
     */
    public boolean meltsInPeak() {
        return fails.contains(Shortfall.PEAK) && peakTemperatureK.isEmpty();
    }
}
