package trestle.propulsion;

import java.util.List;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * Measured coefficients over advance ratio.
 *
 * @param rows at least two, advance ratio rising from row to row
 */
public record CoefficientTable(List<CoefficientRow> rows) implements PropellerData {
    /** Copies the list and checks its order. */
    public CoefficientTable {
        rows = List.copyOf(rows);
        if (rows.size() < 2) {
            throw new ImpossibleValue("rows", "a propeller table needs two rows or more");
        }
        for (int i = 1; i < rows.size(); i++) {
            double rise = rows.get(i).advanceRatio() - rows.get(i - 1).advanceRatio();
            Guard.positive("rows: rise of the advance ratio from row to row", rise);
        }
    }
}
