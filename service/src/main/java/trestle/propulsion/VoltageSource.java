package trestle.propulsion;

import trestle.numeric.Guard;

/** What stands behind the controllers: a voltage that answers to the current drawn. */
@FunctionalInterface
public interface VoltageSource {
    /**
     * Terminal voltage under a current.
     *
     * @param currentA current of all motors together, A, 0 or more
     * @return voltage, V; never rises with the current, and may fall below 0 where the source
     *     collapses
     */
    double terminalVoltageV(double currentA);

    /**
     * A source that no current pulls down: a measured voltage under load.
     *
     * @param voltageV voltage, V, above 0
     * @return the source
     */
    static VoltageSource steady(double voltageV) {
        Guard.positive("voltageV", voltageV);
        return currentA -> voltageV;
    }

    /**
     * A source behind a resistance: {@code V = V0 − I R}.
     *
     * @param openVoltageV voltage at rest V0, V, above 0
     * @param resistanceOhm resistance R of cells and leads, Ω, 0 or more
     * @return the source
     */
    static VoltageSource behindResistance(double openVoltageV, double resistanceOhm) {
        Guard.positive("openVoltageV", openVoltageV);
        Guard.notNegative("resistanceOhm", resistanceOhm);
        return currentA -> openVoltageV - currentA * resistanceOhm;
    }
}
