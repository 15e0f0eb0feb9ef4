package trestle.charging;

import java.util.OptionalDouble;
import trestle.battery.ChargingCell;
import trestle.battery.Segment;

/**
 * The greatest current of a string at one moment, and what sets it.
 *
 * @param task the question
 * @param supplyW power that the supply leaves at this output, W; infinite without a limit
 */
record CurrentLimits(ChargeTask task, double supplyW) {
    /** A current and what sets it. */
    record Limit(double currentA, LimitedBy by) {
        Limit least(double otherA, LimitedBy other) {
            return otherA < currentA ? new Limit(otherA, other) : this;
        }
    }

    /** What the cells of a segment may take, and why not more. */
    Limit allowed(ChargingCell cell) {
        Segment segment = cell.segment();
        double ratedA = CellCare.ratedA(segment);
        double temperatureK = cell.temperatureK();
        return new Limit(ratedA, LimitedBy.CELL_RATING)
                .least(ratedA * CellCare.coldFraction(temperatureK, task.coldRatingK()), LimitedBy.COLD)
                .least(
                        ratedA
                                * CellCare.warmFraction(
                                        temperatureK, segment.cell().dynamics()),
                        LimitedBy.HOT);
    }

    /** All limits but that of the hold voltage. */
    Limit withoutHold(CellString string) {
        Limit limit = new Limit(Double.POSITIVE_INFINITY, LimitedBy.CELL_RATING);
        for (ChargingCell cell : string.cells()) {
            Limit allowed = allowed(cell);
            limit = limit.least(allowed.currentA(), allowed.by());
        }
        limit = limit.least(task.setA().orElse(Double.POSITIVE_INFINITY), LimitedBy.REQUEST);
        limit = limit.least(task.charger().maxCurrentA().orElse(Double.POSITIVE_INFINITY), LimitedBy.CHARGER_CURRENT);
        limit = power(limit, string, task.charger().maxPowerW(), LimitedBy.CHARGER_POWER);
        return power(
                limit,
                string,
                supplyW < Double.POSITIVE_INFINITY ? OptionalDouble.of(supplyW) : OptionalDouble.empty(),
                LimitedBy.SUPPLY_POWER);
    }

    private static Limit power(Limit limit, CellString string, OptionalDouble powerW, LimitedBy by) {
        if (powerW.isEmpty() || string.voltageV(limit.currentA()) * limit.currentA() <= powerW.getAsDouble()) {
            return limit;
        }
        return limit.least(string.currentOfA(powerW.getAsDouble()), by);
    }

    /** Voltage that a cell is held at now, V. */
    double holdV(ChargingCell cell) {
        double wantedV = task.holdV().orElse(cell.segment().cell().fullVoltageV());
        return CellCare.holdV(
                wantedV, cell.temperatureK(), cell.segment().cell().dynamics());
    }

    /** The greatest current at which no cell, or without a balancer the string, is above its hold voltage, A. */
    double holdA(CellString string) {
        if (task.charger().balances() || string.cells().size() == 1) {
            double leastA = Double.POSITIVE_INFINITY;
            for (ChargingCell cell : string.cells()) {
                leastA = Math.min(leastA, cell.segment().parallelCount() * cell.currentAtA(holdV(cell)));
            }
            return leastA;
        }
        return string.currentAtA(string.cells().stream()
                .mapToDouble(cell -> cell.segment().seriesCount() * holdV(cell))
                .sum());
    }
}
