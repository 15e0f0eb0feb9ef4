package trestle.battery;

import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Limits on one cell's data sheet; empty where they are not known.
 *
 * @param maxContinuousCurrentA discharge current it stands for long, A, above 0
 * @param maxChargeCurrentA charging current it stands, A, above 0
 * @param minimumVoltageV least discharge voltage, V, above 0
 * @param fullVoltageV voltage it is charged to, V, above the least
 */
public record CellLimits(
        OptionalDouble maxContinuousCurrentA,
        OptionalDouble maxChargeCurrentA,
        OptionalDouble minimumVoltageV,
        OptionalDouble fullVoltageV) {
    /** Nothing known. */
    public static final CellLimits UNKNOWN = new CellLimits(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** Checks the physics. */
    public CellLimits {
        maxContinuousCurrentA.ifPresent(it -> Guard.positive("maxContinuousCurrentA", it));
        maxChargeCurrentA.ifPresent(it -> Guard.positive("maxChargeCurrentA", it));
        minimumVoltageV.ifPresent(it -> Guard.within("minimumVoltageV", it, 0.5, 5));
        fullVoltageV.ifPresent(it -> Guard.within("fullVoltageV", it, 0.5, 6));
        if (minimumVoltageV.isPresent()
                && fullVoltageV.isPresent()
                && minimumVoltageV.getAsDouble() >= fullVoltageV.getAsDouble()) {
            throw new ImpossibleValue("minimumVoltageV", "a cell's minimum voltage lies below its full voltage");
        }
    }
}
