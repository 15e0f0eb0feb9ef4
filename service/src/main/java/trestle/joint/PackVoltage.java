package trestle.joint;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.Cutoff;
import trestle.battery.Pack;
import trestle.battery.PackRatings;
import trestle.battery.PackState;
import trestle.battery.Surroundings;
import trestle.numeric.Root;
import trestle.propulsion.Supply;
import trestle.propulsion.VoltageSource;

/**
 * A pack as what stands behind the motors: its voltage in the moment of take-off, rested, under any
 * current.
 *
 * <p>A match asks some ten thousand times, so the pack is asked once for a table, and straight
 * lines join its rows: what falls from row to row falls between them. Rows stand close where the
 * current is small, for there the kinetic loss bends the curve.
 */
public final class PackVoltage implements VoltageSource {
    /** Straight lines between so many rows are within a millivolt a cell, see the test. */
    private static final int ROWS = 65;

    /** Doublings from 1 A in search of the current at which the pack collapses. */
    private static final int MOST_DOUBLINGS = 40;

    private static final double ACCURACY_RATIO = 1e-6;

    private final double greatestA;
    private final double[] voltageV = new double[ROWS];

    private PackVoltage(PackState atTakeOff) {
        greatestA = collapseA(atTakeOff);
        for (int i = 0; i < ROWS; i++) {
            voltageV[i] = atTakeOff.terminalVoltageV(currentA(i));
        }
    }

    /**
     * A pack as a supply.
     *
     * @param pack the pack
     * @param cutoff where the controllers stop the motors; empty where that is not known
     * @param surroundings air, and temperature of the cells at take-off
     * @return the supply
     */
    public static Supply supply(Pack pack, Optional<Cutoff> cutoff, Surroundings surroundings) {
        return new Supply(
                new PackVoltage(PackState.of(pack, surroundings)),
                pack.fullVoltageV(),
                PackRatings.of(pack).maxContinuousCurrentA(),
                cutoff.stream().mapToDouble(it -> it.packVoltageV(pack)).findFirst());
    }

    @Override
    public double terminalVoltageV(double currentA) {
        double place = (ROWS - 1) * Math.sqrt(currentA / greatestA);
        int row = Math.min(ROWS - 2, (int) place);
        double fromA = currentA(row);
        double share = (currentA - fromA) / (currentA(row + 1) - fromA);
        return voltageV[row] + share * (voltageV[row + 1] - voltageV[row]);
    }

    private double currentA(int row) {
        double share = (double) row / (ROWS - 1);
        return greatestA * share * share;
    }

    /** The current at which nothing is left of the voltage; the last line goes on from there. */
    private static double collapseA(PackState atTakeOff) {
        double highA = 1;
        for (int i = 0; i < MOST_DOUBLINGS && atTakeOff.terminalVoltageV(highA) > 0; i++) {
            highA *= 2;
        }
        OptionalDouble collapse = Root.between(atTakeOff::terminalVoltageV, 0, highA, highA * ACCURACY_RATIO);
        return collapse.orElse(highA);
    }
}
