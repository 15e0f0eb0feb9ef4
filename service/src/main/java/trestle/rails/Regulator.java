package trestle.rails;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * A regulator, as its data sheet rates it.
 *
 * @param conversion switching or linear
 * @param outputVoltageV regulated voltage, V, above 0
 * @param maxCurrentA continuous rating, A, above 0
 * @param peakCurrentA short-time rating, A, not below the continuous one; empty where none is given
 * @param inputMinV lowest input it regulates from, V, 0 or more
 * @param inputMaxV maximum input voltage, V, above {@code inputMinV}
 * @param cooling how it is cooled; empty where not known
 */
public record Regulator(
        Conversion conversion,
        double outputVoltageV,
        double maxCurrentA,
        OptionalDouble peakCurrentA,
        double inputMinV,
        double inputMaxV,
        Optional<Cooling> cooling) {
    /** Checks the physics. */
    public Regulator {
        Guard.present("conversion", conversion);
        Guard.positive("outputVoltageV", outputVoltageV);
        Guard.positive("maxCurrentA", maxCurrentA);
        Guard.notNegative("inputMinV", inputMinV);
        Guard.positive("inputMaxV", inputMaxV);
        Guard.present("cooling", cooling);
        if (inputMinV >= inputMaxV) {
            throw new ImpossibleValue("inputMaxV", "a regulator's maximum input voltage is above its minimum");
        }
        if (peakCurrentA.isPresent() && !(peakCurrentA.getAsDouble() >= maxCurrentA)) {
            throw new ImpossibleValue("peakCurrentA", "a regulator's peak rating is not below its continuous one");
        }
    }

    /**
     * What a peak is held against.
     *
     * @return the peak rating, or the continuous one where none is given, A
     */
    public double peakRatingA() {
        return peakCurrentA.orElse(maxCurrentA);
    }

    /**
     * Lowest input it regulates from: its maker's figure, and never below what physics needs.
     *
     * @return voltage, V
     */
    public double leastInputV() {
        return Math.max(inputMinV, conversion.leastInputVoltageV(outputVoltageV));
    }

    /**
     * Heat in the regulator: what it draws less what it delivers.
     *
     * @param inputVoltageV voltage at the input, V
     * @param outputCurrentA current delivered, A
     * @return heat, W, 0 or more
     */
    public double heatW(double inputVoltageV, double outputCurrentA) {
        double drawnW = conversion.inputPowerW(inputVoltageV, outputVoltageV, outputCurrentA);
        return Math.max(0, drawnW - outputVoltageV * outputCurrentA);
    }

    /**
     * Current drawn from the pack.
     *
     * @param inputVoltageV voltage at the input, V, above 0
     * @param outputCurrentA current delivered, A
     * @return current, A
     */
    public double inputCurrentA(double inputVoltageV, double outputCurrentA) {
        return conversion.inputPowerW(inputVoltageV, outputVoltageV, outputCurrentA) / inputVoltageV;
    }
}
