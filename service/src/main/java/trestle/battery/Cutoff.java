package trestle.battery;

import trestle.numeric.Guard;

/** Where the discharge ends. */
public sealed interface Cutoff {
    /**
     * The voltage of the whole pack, at the load's end of the leads.
     *
     * @param voltageV cutoff, V, above 0
     */
    record PackVoltage(double voltageV) implements Cutoff {
        /** Checks the physics. */
        public PackVoltage {
            Guard.positive("voltageV", voltageV);
        }
    }

    /**
     * The voltage of the weakest cell: someone watches each cell.
     *
     * @param voltageV cutoff, V, 0.5 to 5
     */
    record CellVoltage(double voltageV) implements Cutoff {
        /** Checks the physics. */
        public CellVoltage {
            Guard.within("voltageV", voltageV, 0.5, 5);
        }
    }

    /**
     * A controller that believes in a count of cells and cuts at count times setting.
     *
     * @param voltageV setting for each cell, V, 0.5 to 5
     * @param cellCount the count it believes in, 1 or more
     * @param stated whether that count is known; otherwise it is what the builder hopes for
     */
    record CountedCells(double voltageV, int cellCount, boolean stated) implements Cutoff {
        /** More than any pack of twenty segments has in series. */
        private static final int MOST_CELLS = 20_000;

        /** Checks the physics. */
        public CountedCells {
            Guard.within("voltageV", voltageV, 0.5, 5);
            Guard.within("cellCount", cellCount, 1, MOST_CELLS);
        }
    }

    /**
     * The voltage of the pack that it comes to when all cells are alike.
     *
     * @param pack the pack
     * @return voltage, V
     */
    default double packVoltageV(Pack pack) {
        if (this instanceof PackVoltage atPack) {
            return atPack.voltageV;
        }
        if (this instanceof CellVoltage atCell) {
            return atCell.voltageV * pack.seriesCount();
        }
        if (this instanceof CountedCells counted) {
            return counted.voltageV * counted.cellCount;
        }
        return pack.segments().stream()
                .mapToDouble(it -> it.seriesCount() * it.cell().minimumVoltageV())
                .sum();
    }

    /** Whether the voltage of the whole pack is watched, and no cell's. */
    default boolean isOfPack() {
        return this instanceof PackVoltage || this instanceof CountedCells;
    }

    /** Each cell's own minimum voltage, whichever cell gets there first. */
    record CellMinimum() implements Cutoff {}
}
