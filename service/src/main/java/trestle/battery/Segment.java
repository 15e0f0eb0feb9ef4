package trestle.battery;

import trestle.numeric.Guard;

/**
 * Equal cells, some in parallel, such groups in series.
 *
 * @param seriesCount groups in series, 1 or more
 * @param parallelCount cells in parallel in each group, 1 or more
 * @param cell the cell, as new
 * @param healthFraction capacity left of the new cell's, 0.3 to 1
 * @param stateOfChargeFraction charge at the start, of what the cell now holds, 0 to 1
 */
public record Segment(
        int seriesCount, int parallelCount, Cell cell, double healthFraction, double stateOfChargeFraction) {
    private static final double LEAST_HEALTH = 0.3;

    /** Checks the physics. */
    public Segment {
        Guard.within("seriesCount", seriesCount, 1, 1000);
        Guard.within("parallelCount", parallelCount, 1, 1000);
        Guard.present("cell", cell);
        Guard.within("healthFraction", healthFraction, LEAST_HEALTH, 1);
        Guard.within("stateOfChargeFraction", stateOfChargeFraction, 0, 1);
    }

    /**
     * Full, new cells.
     *
     * @param seriesCount groups in series
     * @param parallelCount cells in parallel
     * @param cell the cell
     * @return the segment
     */
    public static Segment full(int seriesCount, int parallelCount, Cell cell) {
        return new Segment(seriesCount, parallelCount, cell, 1, 1);
    }

    int cellCount() {
        return seriesCount * parallelCount;
    }

    /** Charge that the segment passes from full to empty as it is now, C. */
    double capacityC() {
        return parallelCount * cell.capacityC() * healthFraction;
    }
}
