package trestle.battery;

import trestle.numeric.Root;

/**
 * The greatest power that a pack gives at one moment without falling below its limits, its lags
 * being what they are: what is there for a burst of a second or two.
 */
final class PowerLimit {
    private static final double ACCURACY_A = 1e-6;

    /** Doublings from 1 A in search of the limit: far beyond any pack. */
    private static final int MOST_DOUBLINGS = 60;

    private PowerLimit() {}

    /**
     * Largest power: at the current that brings the voltage down to the nearest limit, at the
     * cells' rating, or where {@code V I} is greatest, whichever is the least.
     *
     * @param state the moment
     * @param limits lowest voltages
     * @param ratedA current that the cells stand, A; infinite where it is not known
     * @return power, W; 0 where a limit is passed without any load
     */
    static double largestW(PackState state, Limits limits, double ratedA) {
        Circuit circuit = new Circuit(state);
        circuit.prepare();
        if (marginV(circuit, limits, 0) <= 0) {
            return 0;
        }
        double highA = 1;
        for (int i = 0;
                i < MOST_DOUBLINGS && marginV(circuit, limits, highA) > 0 && powerSlopeV(circuit, highA) > 0;
                i++) {
            highA *= 2;
        }
        double bound = highA;
        double atLimitA = Root.between(i -> marginV(circuit, limits, i), 0, bound, ACCURACY_A)
                .orElse(bound);
        double atPeakA =
                Root.between(i -> powerSlopeV(circuit, i), 0, bound, ACCURACY_A).orElse(bound);
        circuit.at(Math.min(ratedA, Math.min(atLimitA, atPeakA)));
        return circuit.voltageV() * circuit.currentA();
    }

    private static double marginV(Circuit circuit, Limits limits, double currentA) {
        circuit.at(currentA);
        return circuit.marginV(limits);
    }

    private static double powerSlopeV(Circuit circuit, double currentA) {
        circuit.at(currentA);
        return circuit.powerSlopeV();
    }
}
