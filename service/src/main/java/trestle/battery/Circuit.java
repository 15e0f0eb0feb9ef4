package trestle.battery;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The cells of a pack in series and the leads: finds the one current. Not thread-safe; lives inside
 * one call.
 */
final class Circuit {
    /** Newton's error squares at each step: what this last step leaves is below 1e-10. */
    private static final double ACCURACY = 1e-5;

    /** Near the greatest power Newton only halves its error; 60 halvings exhaust a double. */
    private static final int MOST_ITERATIONS = 60;

    private final Pack pack;
    private final int count;
    private final int[] series;
    private final double[] shareOfCurrent;
    private final double[] cellV;
    private final double[] cellHeatW;
    private final CellState[] cells;
    private final double leadOhm;

    private double currentA;
    private double growthA;
    private double voltageV;
    private double slopeOhm;
    private double openV;
    private boolean harmful;

    Circuit(PackState state) {
        pack = state.pack();
        count = pack.segments().size();
        series = new int[count];
        shareOfCurrent = new double[count];
        cellV = new double[count];
        cellHeatW = new double[count];
        cells = new CellState[count];
        leadOhm = pack.leadResistanceOhm();
        for (int k = 0; k < count; k++) {
            Segment segment = pack.segments().get(k);
            series[k] = segment.seriesCount();
            shareOfCurrent[k] = 1.0 / segment.parallelCount();
            cells[k] = state.copyOfCell(k);
        }
    }

    PackState state() {
        List<CellState> copies =
                IntStream.range(0, count).mapToObj(k -> cells[k].copy()).toList();
        return PackState.of(pack, copies);
    }

    void take(Circuit other) {
        for (int k = 0; k < count; k++) {
            cells[k].take(other.cells[k]);
        }
        currentA = other.currentA;
        growthA = other.growthA;
        voltageV = other.voltageV;
    }

    /**
     * Finds the current of a power by Newton's method on {@code V(I) I = P}. The left side is
     * concave in the current, so that from below the root each iterate stays below it.
     *
     * @param powerW power at the end of the leads, W, not negative
     * @return false where the pack cannot give it; the load is then off
     */
    boolean solvePower(double powerW) {
        prepare();
        if (powerW == 0) {
            at(0);
            return true;
        }
        if (findCurrent(powerW)) {
            return true;
        }
        at(0);
        return false;
    }

    private boolean findCurrent(double powerW) {
        if (openV <= 0) {
            return false;
        }
        double leastA = powerW / openV;
        double beforeA = currentA;
        double guessA = Math.max(currentA + growthA, leastA);
        for (int n = 0; n < MOST_ITERATIONS; n++) {
            at(guessA);
            double slopeV = voltageV - guessA * slopeOhm;
            if (slopeV > 0) {
                double stepA = (voltageV * guessA - powerW) / slopeV;
                guessA -= stepA;
                if (Math.abs(stepA) <= ACCURACY * guessA) {
                    currentA = guessA;
                    growthA = guessA - beforeA;
                    voltageV = powerW / guessA;
                    return true;
                }
            } else if (n == 0 && guessA > leastA) {
                guessA = leastA;
            } else {
                return false;
            }
        }
        return false;
    }

    void solveCurrent(double fixedA) {
        prepare();
        at(fixedA);
    }

    /**
     * Takes a current from the pack.
     *
     * @param fixedA current, A, above 0
     * @return false where nothing would be left of the voltage; the load is then off
     */
    boolean solveFixed(double fixedA) {
        solveCurrent(fixedA);
        if (voltageV > 0) {
            return true;
        }
        at(0);
        return false;
    }

    /** Works out what does not depend on the current; needed before {@link #at}. */
    void prepare() {
        openV = 0;
        for (int k = 0; k < count; k++) {
            cells[k].prepare();
            openV += series[k] * cells[k].openV();
        }
    }

    /** Voltages at a current. */
    void at(double newCurrentA) {
        currentA = newCurrentA;
        voltageV = -newCurrentA * leadOhm;
        slopeOhm = leadOhm;
        for (int k = 0; k < count; k++) {
            double cellA = newCurrentA * shareOfCurrent[k];
            cellV[k] = cells[k].voltageV(cellA);
            voltageV += series[k] * cellV[k];
            slopeOhm += series[k] * cells[k].slopeOhm(cellA) * shareOfCurrent[k];
        }
    }

    /**
     * Voltage left above the nearest limit, for one cell, V; notes which limit that is.
     *
     * @param limits the limits
     * @return margin, V; negative beyond a limit
     */
    double marginV(Limits limits) {
        double leastV = limits.packMarginV(voltageV);
        harmful = false;
        for (int k = 0; k < count; k++) {
            double marginV = limits.cellMarginV(k, cellV[k]);
            if (marginV < leastV) {
                leastV = marginV;
                harmful = limits.isHarmful(k);
            }
        }
        return leastV;
    }

    /**
     * Heat set free in all cells: what each would give at rest and does not deliver, {@code i (OCV
     * - V)}; kept for {@link #advance}.
     *
     * @return heat, W
     */
    double heatW() {
        double heatW = 0;
        for (int k = 0; k < count; k++) {
            double lostV = cells[k].restV() - cellV[k];
            cellHeatW[k] = currentA * shareOfCurrent[k] * lostV;
            heatW += series[k] * currentA * lostV;
        }
        return heatW;
    }

    double leadLossW() {
        return currentA * currentA * leadOhm;
    }

    /** Goes on at the present current and the heat last worked out. */
    void advance(double dtS) {
        for (int k = 0; k < count; k++) {
            cells[k].advance(currentA * shareOfCurrent[k], cellHeatW[k], dtS);
        }
    }

    /** Time in which the present current takes a share of the smallest cell's charge, s. */
    double timeOfChargeS(double chargeFraction) {
        double leastS = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            double cellA = currentA * shareOfCurrent[k];
            leastS = Math.min(leastS, chargeFraction * cells[k].cell().capacityC() / cellA);
        }
        return leastS;
    }

    double currentA() {
        return currentA;
    }

    double voltageV() {
        return voltageV;
    }

    /** How fast the power grows with the current, {@code d(VI)/dI}, V. */
    double powerSlopeV() {
        return voltageV - currentA * slopeOhm;
    }

    List<SegmentOutcome> outcomes() {
        return IntStream.range(0, count)
                .mapToObj(k -> new SegmentOutcome(cellV[k], cells[k].charge, cells[k].temperatureK))
                .toList();
    }

    CellState cell(int segment) {
        return cells[segment];
    }

    double cellVoltageV(int segment) {
        return cellV[segment];
    }

    /** Segment whose cells are nearest to harm, from 0. */
    int weakest() {
        int weakest = 0;
        double weakestV = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            double aboveV = cellV[k] - pack.segments().get(k).cell().overDischargeV();
            if (aboveV < weakestV) {
                weakestV = aboveV;
                weakest = k;
            }
        }
        return weakest;
    }

    /** Whether the nearest limit is where harm begins. */
    boolean isHarmful() {
        return harmful;
    }

    double leastCharge() {
        double least = Double.POSITIVE_INFINITY;
        for (CellState cell : cells) {
            least = Math.min(least, cell.charge);
        }
        return least;
    }

    double highestK() {
        double highest = 0;
        for (CellState cell : cells) {
            highest = Math.max(highest, cell.temperatureK);
        }
        return highest;
    }
}
