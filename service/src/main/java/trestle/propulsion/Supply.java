package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * The pack as the motors see it.
 *
 * @param source its voltage under load
 * @param fullVoltageV highest voltage that it ever has, freshly charged and at rest, V, above 0
 * @param maxCurrentA current that it may give continuously, A; empty where none is stated
 * @param cutoffVoltageV voltage under load at which the controllers stop the motors, V; empty where
 *     none is stated
 */
public record Supply(
        VoltageSource source, double fullVoltageV, OptionalDouble maxCurrentA, OptionalDouble cutoffVoltageV) {
    /** Checks the physics. */
    public Supply {
        Guard.present("source", source);
        Guard.positive("fullVoltageV", fullVoltageV);
        maxCurrentA.ifPresent(limit -> Guard.positive("maxCurrentA", limit));
        cutoffVoltageV.ifPresent(limit -> Guard.positive("cutoffVoltageV", limit));
        Guard.positive("voltage of the source at rest", source.terminalVoltageV(0));
    }

    /**
     * A supply of one voltage.
     *
     * @param voltageV voltage, V, above 0
     * @return the supply
     */
    public static Supply steady(double voltageV) {
        return new Supply(VoltageSource.steady(voltageV), voltageV, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Voltage without load.
     *
     * @return voltage, V
     */
    public double restVoltageV() {
        return source.terminalVoltageV(0);
    }
}
