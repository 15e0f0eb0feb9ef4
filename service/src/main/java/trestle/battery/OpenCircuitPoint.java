package trestle.battery;

import trestle.numeric.Guard;

/**
 * A point of a measured open-circuit curve: a rest voltage, or a discharge at C/20 or slower with
 * the resistive drop added back.
 *
 * @param stateOfChargeFraction state of charge, 0 to 1
 * @param voltageV rest voltage of one cell, V, 0.5 to 6
 */
public record OpenCircuitPoint(double stateOfChargeFraction, double voltageV) {
    /** Checks the physics. */
    public OpenCircuitPoint {
        Guard.within("stateOfChargeFraction", stateOfChargeFraction, 0, 1);
        Guard.within("voltageV", voltageV, 0.5, 6);
    }
}
