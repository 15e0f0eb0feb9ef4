package trestle.rails;

import trestle.numeric.Guard;

/** How a regulator makes its output from its input. */
public sealed interface Conversion {
    /**
     * Power drawn from the pack.
     *
     * @param inputVoltageV voltage at the input, V, above 0
     * @param outputVoltageV regulated voltage, V, above 0
     * @param outputCurrentA current delivered, A, 0 or more
     * @return power, W
     */
    double inputPowerW(double inputVoltageV, double outputVoltageV, double outputCurrentA);

    /**
     * Lowest input it can make the output from, whatever its maker says.
     *
     * @param outputVoltageV regulated voltage, V
     * @return voltage, V
     */
    double leastInputVoltageV(double outputVoltageV);

    /**
     * A switching regulator: {@code Pin = Pout / η}, [1].
     *
     * @param efficiencyRatio η, output power over input power, above 0 to 1
     */
    record Switching(double efficiencyRatio) implements Conversion {
        /** A small step-down module at half load; common practice, no source. */
        public static final double USUAL_EFFICIENCY_RATIO = 0.85;

        /** Checks the physics. */
        public Switching {
            Guard.positive("efficiencyRatio", efficiencyRatio);
            Guard.within("efficiencyRatio", efficiencyRatio, 0, 1);
        }

        @Override
        public double inputPowerW(double inputVoltageV, double outputVoltageV, double outputCurrentA) {
            return outputVoltageV * outputCurrentA / efficiencyRatio;
        }

        @Override
        public double leastInputVoltageV(double outputVoltageV) {
            return 0;
        }
    }

    /** A linear regulator: {@code Iin = Iout}, so {@code Pin = Vin I}, [1]. */
    record Linear() implements Conversion {
        @Override
        public double inputPowerW(double inputVoltageV, double outputVoltageV, double outputCurrentA) {
            return inputVoltageV * outputCurrentA;
        }

        @Override
        public double leastInputVoltageV(double outputVoltageV) {
            return outputVoltageV;
        }
    }
}
