package trestle.battery;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Cells whose voltage is a straight line over charge, behind a resistor: what closed forms are of. */
public final class LinearCells {
    private static final double CAPACITY_C = 4.9 * 3600;
    private static final double RESISTANCE_OHM = 0.030;

    private static final CellSet SET = new CellSet(
            Electrodes.of(z -> 3.4 + 0.8 * z, z -> 0),
            RESISTANCE_OHM * CAPACITY_C,
            0,
            0,
            1e9,
            0,
            1e-6,
            0,
            1e-6,
            0,
            0,
            1,
            0,
            0,
            CAPACITY_C);

    private LinearCells() {}

    /** So many of them in series, each a segment. */
    public static Pack pack(int count) {
        return new Pack(
                Collections.nCopies(count, Segment.full(1, 1, Cell.typical(Chemistry.LIPO, 30 * CAPACITY_C))), 0);
    }

    /** Those cells at 25 °C, each fuller than the one before. */
    public static List<ChargingCell> charging(Pack pack, double fromFraction, double stepFraction) {
        List<ChargingCell> cells = new ArrayList<>();
        for (Segment segment : pack.segments()) {
            CellModel model = new CellModel(SET, CAPACITY_C, RESISTANCE_OHM, SET.exchangePerS() * CAPACITY_C, 1);
            double fraction = fromFraction + stepFraction * cells.size();
            cells.add(new ChargingCell(segment, new CellState(model, Bath.keepingAt(298.15), fraction)));
        }
        return cells;
    }
}
