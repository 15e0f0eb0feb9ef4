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
     */
    record CountedCells(double voltageV, int cellCount) implements Cutoff {
        /** Checks the physics. */
        public CountedCells {
            Guard.within("voltageV", voltageV, 0.5, 5);
            Guard.within("cellCount", cellCount, 1, 1000);
        }
    }

    /** Each cell's own minimum voltage, whichever cell gets there first. */
    record CellMinimum() implements Cutoff {}
}
