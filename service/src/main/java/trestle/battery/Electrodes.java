package trestle.battery;

import java.util.function.DoubleUnaryOperator;
import trestle.numeric.PolyLine;

/**
 * Potentials of the two electrodes over the cell's state of charge, on a uniform grid with linear
 * interpolation. The grid reaches below empty, since one electrode's surface may pass its limit
 * while the other still has charge; beyond its ends the last slope goes on.
 */
final class Electrodes {
    static final double LOWEST_FRACTION = -0.2;
    static final double HIGHEST_FRACTION = 1.02;

    /** Steps to a unit of charge: 0.0025 holds every knot of the published tables exactly. */
    private static final double STEPS_PER_UNIT = 400;

    private static final int POINTS = (int) Math.round((HIGHEST_FRACTION - LOWEST_FRACTION) * STEPS_PER_UNIT) + 1;

    private final double[] positiveV = new double[POINTS];
    private final double[] negativeV = new double[POINTS];

    private Electrodes(DoubleUnaryOperator positive, DoubleUnaryOperator negative) {
        for (int i = 0; i < POINTS; i++) {
            double fraction = LOWEST_FRACTION + i / STEPS_PER_UNIT;
            positiveV[i] = positive.applyAsDouble(fraction);
            negativeV[i] = negative.applyAsDouble(fraction);
        }
    }

    static Electrodes of(DoubleUnaryOperator positive, DoubleUnaryOperator negative) {
        return new Electrodes(positive, negative);
    }

    /**
     * These electrodes with the positive one moved so that the cell shows a measured open-circuit
     * curve: {@code UP = OCV + UN}. Below empty, where nothing was measured, UP goes on with its
     * slope between 3 and 8 %.
     *
     * @param curve voltage over state of charge
     * @return the electrodes of that cell
     */
    Electrodes withOpenCircuit(PolyLine curve) {
        DoubleUnaryOperator measured = z -> curve.at(z) + negativeV(z);
        double emptyV = measured.applyAsDouble(0);
        double slope = (measured.applyAsDouble(0.08) - measured.applyAsDouble(0.03)) / 0.05;
        return of(z -> z < 0 ? emptyV + slope * z : measured.applyAsDouble(z), this::negativeV);
    }

    double positiveV(double fraction) {
        return at(positiveV, fraction);
    }

    double negativeV(double fraction) {
        return at(negativeV, fraction);
    }

    double openCircuitV(double fraction) {
        return positiveV(fraction) - negativeV(fraction);
    }

    /** State of charge at which the open-circuit voltage is reached from below, 0 to 1. */
    double fractionAtOpenCircuitV(double voltageV) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (openCircuitV(middle) < voltageV) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double at(double[] table, double fraction) {
        double place = (fraction - LOWEST_FRACTION) * STEPS_PER_UNIT;
        int i = Math.max(0, Math.min(POINTS - 2, (int) place));
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }
}
