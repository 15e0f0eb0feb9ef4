package trestle.battery;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * Equal cells, some in parallel, such groups in series.
 *
 * @param name what its builder calls it; empty where it has no name
 * @param seriesCount groups in series, 1 or more
 * @param parallelCount cells in parallel in each group, 1 or more
 * @param cell the cell, as new
 * @param healthFraction capacity left of the new cell's, 0.3 to 1
 * @param stateOfChargeFraction charge at the start, of what the cell now holds, 0 to 1
 * @param massKg mass of the finished block with strips, leads and wrap, kg; empty: worked out from its cells
 */
public record Segment(
        String name,
        int seriesCount,
        int parallelCount,
        Cell cell,
        double healthFraction,
        double stateOfChargeFraction,
        OptionalDouble massKg) {
    private static final double LEAST_HEALTH = 0.3;

    /** Strips, leads and wrap over the mass of the cells: 5 to 15 % is usual; from memory. */
    static final double OVERHEAD_FRACTION = 0.10;

    /** Checks the physics. */
    public Segment {
        Guard.present("name", name);
        massKg.ifPresent(it -> Guard.positive("massKg", it));
        Guard.within("seriesCount", seriesCount, 1, 1000);
        Guard.within("parallelCount", parallelCount, 1, 1000);
        Guard.present("cell", cell);
        Guard.within("healthFraction", healthFraction, LEAST_HEALTH, 1);
        Guard.within("stateOfChargeFraction", stateOfChargeFraction, 0, 1);
    }

    /**
     * A block without a name, whose mass is that of its cells and a tenth.
     *
     * @param seriesCount groups in series
     * @param parallelCount cells in parallel
     * @param cell the cell
     * @param healthFraction capacity left of the new cell's
     * @param stateOfChargeFraction charge at the start
     */
    public Segment(int seriesCount, int parallelCount, Cell cell, double healthFraction, double stateOfChargeFraction) {
        this("", seriesCount, parallelCount, cell, healthFraction, stateOfChargeFraction, OptionalDouble.empty());
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

    /**
     * The same at another charge.
     *
     * @param fraction state of charge, of what the cell now holds, 0 to 1
     * @return the segment
     */
    public Segment atCharge(double fraction) {
        return new Segment(name, seriesCount, parallelCount, cell, healthFraction, fraction, massKg);
    }

    int cellCount() {
        return seriesCount * parallelCount;
    }

    /** Mass of the finished block, kg: as given, or its cells and a tenth. */
    double blockMassKg() {
        return massKg.orElseGet(() -> cellCount() * cellMassKg() * (1 + OVERHEAD_FRACTION));
    }

    /** Mass of one bare cell, kg: as given, its share of the block's, or typical of the chemistry. */
    double cellMassKg() {
        return knownCellMassKg().orElseGet(cell::massOrTypicalKg);
    }

    /** Mass of one bare cell, kg; empty where neither its own nor the block's is given. */
    OptionalDouble knownCellMassKg() {
        if (cell.massKg().isPresent() || massKg.isEmpty()) {
            return cell.massKg();
        }
        return OptionalDouble.of(massKg.getAsDouble() / (1 + OVERHEAD_FRACTION) / cellCount());
    }

    /** Charge that the segment passes from full to empty as it is now, C. */
    double capacityC() {
        return parallelCount * cell.capacityC() * healthFraction;
    }
}
