package trestle.wiring;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How one gauge does on a task.
 *
 * @param wire the wire
 * @param resistanceOhm both ways, wires in parallel, at the conductor's temperature, Ω; at the
 *     melting point of copper where the wire does not settle
 * @param dropV drop in the wires, V
 * @param totalDropV drop with the connectors, V
 * @param totalDropFraction the same over supply voltage; what the limit is held against
 * @param peakDropV drop with the connectors at the end of the peak, V; empty where there is no peak
 * @param peakDropFraction the same over supply voltage
 * @param lossW heat made in the wires, W
 * @param conductorTemperatureK where the copper settles, K; empty where it does not settle
 * @param surfaceTemperatureK where the surface settles, of the bundle where there is one, K; empty likewise
 * @param peakTemperatureK copper at the end of the peak, K; empty where there is no peak or the copper melts in it
 * @param peakSurfaceTemperatureK surface at the end of the peak, K; empty likewise
 * @param ampacityA current of the whole run (all wires) at which the copper settles at the
 *     insulation's rating in these surroundings, A; 0 where these are no cooler than the rating
 * @param massKg both ways, all wires, copper and insulation, kg
 * @param energyCostJ energy for its loss and its carriage, J; empty without flight data
 * @param fails why it does not meet the task; empty when it does
 */
public record GaugeAnswer(
        Wire wire,
        double resistanceOhm,
        double dropV,
        double totalDropV,
        double totalDropFraction,
        OptionalDouble peakDropV,
        OptionalDouble peakDropFraction,
        double lossW,
        OptionalDouble conductorTemperatureK,
        OptionalDouble surfaceTemperatureK,
        OptionalDouble peakTemperatureK,
        OptionalDouble peakSurfaceTemperatureK,
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
        return new GaugeTrial(task, task.wire(gauge)).answer();
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
     * Whether the copper finds no steady temperature below its melting point.
     *
     * @return true when it does not settle
     */
    public boolean runsAway() {
        return conductorTemperatureK.isEmpty();
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
