package trestle.propulsion;

import java.util.List;
import java.util.OptionalDouble;
import trestle.numeric.PolyLine;

/**
 * A measured table, read by straight lines between its rows: nothing is invented between them.
 *
 * <p>Below the first row its values are kept; past the last one the last line goes on, so that
 * thrust falls to zero and the wind takes over somewhere.
 */
final class MeasuredMap implements PropellerMap {
    private final double[] advanceRatios;
    private final double[] thrusts;
    private final double[] powers;
    private final PolyLine thrustLine;
    private final PolyLine powerLine;

    private MeasuredMap(List<CoefficientRow> rows) {
        advanceRatios = rows.stream().mapToDouble(CoefficientRow::advanceRatio).toArray();
        thrusts = rows.stream().mapToDouble(CoefficientRow::thrustCoefficient).toArray();
        powers = rows.stream().mapToDouble(CoefficientRow::powerCoefficient).toArray();
        thrustLine = new PolyLine(advanceRatios, thrusts);
        powerLine = new PolyLine(advanceRatios, powers);
    }

    static MeasuredMap of(CoefficientTable table) {
        return new MeasuredMap(table.rows());
    }

    @Override
    public PropellerCoefficients at(double advanceRatio, double revPerS) {
        int last = advanceRatios.length - 1;
        if (advanceRatio > advanceRatios[last]) {
            return beyond(advanceRatio - advanceRatios[last]);
        }
        double measured = Math.max(advanceRatios[0], advanceRatio);
        return new PropellerCoefficients(thrustLine.at(measured), powerLine.at(measured));
    }

    /** The last line goes on, and no slower than to end thrust within the same distance again. */
    private PropellerCoefficients beyond(double distance) {
        int last = advanceRatios.length - 1;
        double run = advanceRatios[last] - advanceRatios[last - 1];
        double thrustSlope = (thrusts[last] - thrusts[last - 1]) / run;
        double powerSlope = (powers[last] - powers[last - 1]) / run;
        double gentlest = -Math.abs(thrusts[last]) / advanceRatios[last];
        return new PropellerCoefficients(
                thrusts[last] + distance * Math.min(thrustSlope, gentlest), powers[last] + distance * powerSlope);
    }

    @Override
    public double greatestAdvanceRatio() {
        return advanceRatios[advanceRatios.length - 1];
    }

    @Override
    public OptionalDouble leastMeasuredAdvanceRatio() {
        return OptionalDouble.of(advanceRatios[0]);
    }
}
