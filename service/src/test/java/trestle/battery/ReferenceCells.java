package trestle.battery;

import java.util.List;

/** Cells of the published sets, as the charges that they are compared with had them. */
public final class ReferenceCells {
    private ReferenceCells() {}

    /** Charge that a set was fitted to, C. */
    public static double capacityC(String source) {
        return Cells.setOf(source).fittedCapacityC();
    }

    /** An empty cell that keeps a temperature. */
    public static ChargingCell empty(String source, Segment segment, double temperatureK) {
        CellSet set = Cells.setOf(source);
        CellModel model = CellModel.plain(set, set.fittedCapacityC(), 1);
        return new ChargingCell(segment, new CellState(model, Bath.keepingAt(temperatureK), 0));
    }

    /** A pack of one cell of that capacity, with a charging current that nothing limits. */
    public static Pack pack(String source) {
        return new Pack(
                List.of(Segment.full(
                        1,
                        1,
                        Cell.typical(Chemistry.LIPO, 1000 * Cells.setOf(source).fittedCapacityC()))),
                0);
    }
}
