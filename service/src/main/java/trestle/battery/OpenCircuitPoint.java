package trestle.battery;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;
import trestle.numeric.PolyLine;

/**
 * A point of a measured open-circuit curve: a rest voltage, or a discharge at C/20 or slower with
 * the resistive drop added back.
 *
 * @param stateOfChargeFraction state of charge, 0 to 1
 * @param voltageV rest voltage of one cell, V, 0.5 to 6
 */
public record OpenCircuitPoint(double stateOfChargeFraction, double voltageV) {
    private static final double MUST_START_BELOW = 0.1;
    private static final double MUST_END_ABOVE = 0.9;

    /** Checks the physics. */
    public OpenCircuitPoint {
        Guard.within("stateOfChargeFraction", stateOfChargeFraction, 0, 1);
        Guard.within("voltageV", voltageV, 0.5, 6);
    }

    /** Refuses a curve that is not rising or leaves an end of the charge out. */
    static void check(List<OpenCircuitPoint> curve) {
        if (curve.isEmpty()) {
            return;
        }
        for (int i = 1; i < curve.size(); i++) {
            OpenCircuitPoint before = curve.get(i - 1);
            OpenCircuitPoint here = curve.get(i);
            if (here.stateOfChargeFraction <= before.stateOfChargeFraction || here.voltageV < before.voltageV) {
                throw new ImpossibleValue(
                        "openCircuitCurve",
                        "the open-circuit curve must rise: its point "
                                + (i + 1)
                                + " does not lie above the point before it");
            }
        }
        if (curve.size() < 3
                || curve.get(0).stateOfChargeFraction > MUST_START_BELOW
                || curve.get(curve.size() - 1).stateOfChargeFraction < MUST_END_ABOVE) {
            throw new ImpossibleValue(
                    "openCircuitCurve",
                    "the open-circuit curve needs three points or more, from 10 % or less to 90 %"
                            + " or more of the charge");
        }
    }

    static PolyLine line(List<OpenCircuitPoint> curve) {
        return new PolyLine(
                curve.stream()
                        .mapToDouble(OpenCircuitPoint::stateOfChargeFraction)
                        .toArray(),
                curve.stream().mapToDouble(OpenCircuitPoint::voltageV).toArray());
    }
}
