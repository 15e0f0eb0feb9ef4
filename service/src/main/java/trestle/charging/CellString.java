package trestle.charging;

import java.util.List;
import trestle.battery.ChargingCell;

/** Segments that share one current, while they are charged. Not thread-safe; lives inside one run. */
final class CellString {
    private static final int MOST_STEPS = 60;
    private static final double ACCURACY = 1e-9;

    private final List<ChargingCell> cells;
    private final double leadOhm;

    CellString(List<ChargingCell> cells, double leadOhm) {
        this.cells = cells;
        this.leadOhm = leadOhm;
    }

    CellString copy() {
        return new CellString(cells.stream().map(ChargingCell::copy).toList(), leadOhm);
    }

    void take(CellString other) {
        for (int k = 0; k < cells.size(); k++) {
            cells.get(k).take(other.cells.get(k));
        }
        prepare();
    }

    void prepare() {
        cells.forEach(ChargingCell::prepare);
    }

    List<ChargingCell> cells() {
        return cells;
    }

    /** Current of one cell of a segment, A. */
    double cellA(int k, double currentA) {
        return currentA / cells.get(k).segment().parallelCount();
    }

    double cellV(int k, double currentA) {
        return cells.get(k).voltageV(cellA(k, currentA));
    }

    /** Voltage at the charger's output, V. */
    double voltageV(double currentA) {
        double sum = currentA * leadOhm;
        for (int k = 0; k < cells.size(); k++) {
            sum += cells.get(k).segment().seriesCount() * cellV(k, currentA);
        }
        return sum;
    }

    private double slopeOhm(double currentA) {
        double sum = leadOhm;
        for (int k = 0; k < cells.size(); k++) {
            int parallel = cells.get(k).segment().parallelCount();
            sum += cells.get(k).segment().seriesCount() * cells.get(k).slopeOhm(cellA(k, currentA)) / parallel;
        }
        return sum;
    }

    double highestCellV(double currentA) {
        double highest = 0;
        for (int k = 0; k < cells.size(); k++) {
            highest = Math.max(highest, cellV(k, currentA));
        }
        return highest;
    }

    /** The current at which the string shows a voltage, A; 0 where it shows more at rest. */
    double currentAtA(double wantedV) {
        double currentA = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double lackV = wantedV - voltageV(currentA);
            if (currentA == 0 && lackV <= 0) {
                return 0;
            }
            double moreA = lackV / slopeOhm(currentA);
            currentA += moreA;
            if (Math.abs(moreA) <= ACCURACY * currentA) {
                break;
            }
        }
        return currentA;
    }

    /** The current that takes a power, A: voltage rises with current, so there is one. */
    double currentOfA(double powerW) {
        double currentA = powerW / voltageV(0);
        for (int step = 0; step < MOST_STEPS; step++) {
            double voltageV = voltageV(currentA);
            double moreA = (powerW - voltageV * currentA) / (voltageV + currentA * slopeOhm(currentA));
            currentA += moreA;
            if (Math.abs(moreA) <= ACCURACY * currentA) {
                break;
            }
        }
        return currentA;
    }

    /** Heat in all cells, W. */
    double heatW(double currentA) {
        double sum = 0;
        for (int k = 0; k < cells.size(); k++) {
            var segment = cells.get(k).segment();
            sum += segment.seriesCount()
                    * segment.parallelCount()
                    * cells.get(k).heatW(cellA(k, currentA));
        }
        return sum;
    }

    void advance(double currentA, double dtS) {
        for (int k = 0; k < cells.size(); k++) {
            ChargingCell cell = cells.get(k);
            double cellA = cellA(k, currentA);
            cell.advance(cellA, cell.heatW(cellA), dtS);
        }
        prepare();
    }

    double lowestFraction() {
        return cells.stream().mapToDouble(ChargingCell::chargeFraction).min().orElseThrow();
    }

    double highestK() {
        return cells.stream().mapToDouble(ChargingCell::temperatureK).max().orElseThrow();
    }

    /** Charge of the smallest segment, C. */
    double capacityC() {
        return cells.stream()
                .mapToDouble(cell -> cell.capacityC() * cell.segment().parallelCount())
                .min()
                .orElseThrow();
    }
}
