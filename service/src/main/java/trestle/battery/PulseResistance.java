package trestle.battery;

import java.util.OptionalDouble;
import trestle.numeric.Root;

/**
 * The resistance that a direct-current test finds: 1C for 10 s from rest at half charge, 25 °C.
 * Used to bring a parameter set to a measured cell.
 */
final class PulseResistance {
    private static final double PULSE_S = 10;
    private static final double HALF = 0.5;
    private static final double LEAST_FACTOR = 0.01;
    private static final double GREATEST_FACTOR = 100;
    private static final double ACCURACY = 1e-6;

    private PulseResistance() {}

    /**
     * Fall of voltage over current at the end of the pulse.
     *
     * @param set kind of cell
     * @param capacityC capacity, C
     * @param factor ohmic resistance over the set's, and the set's exchange current over the cell's
     * @return resistance, Ω
     */
    static double ohm(CellSet set, double capacityC, double factor) {
        CellModel cell = CellModel.plain(set, capacityC, factor);
        CellState state = new CellState(cell, Bath.keepingAt(CellModel.REFERENCE_K), HALF);
        double currentA = capacityC / 3600;
        state.advance(currentA, 0, PULSE_S);
        state.prepare();
        double restV = set.electrodes().openCircuitV(HALF);
        return (restV - state.voltageV(currentA)) / currentA;
    }

    /**
     * The factor that brings a set to a measured resistance. The part that is diffusion does not
     * scale, so it is found by iteration.
     *
     * @param set kind of cell
     * @param capacityC capacity, C
     * @param resistanceOhm measured resistance, Ω
     * @return the factor; empty where the measured one is so low or so high that no factor gives it
     */
    static OptionalDouble factor(CellSet set, double capacityC, double resistanceOhm) {
        return Root.between(
                        log -> ohm(set, capacityC, Math.exp(log)) / resistanceOhm - 1,
                        Math.log(LEAST_FACTOR),
                        Math.log(GREATEST_FACTOR),
                        ACCURACY)
                .stream()
                .map(Math::exp)
                .findFirst();
    }
}
