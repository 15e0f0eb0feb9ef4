package trestle.battery;

import java.util.Arrays;
import java.util.List;

/** The kinds of cell, as reference rows. */
public final class Chemistries {
    private Chemistries() {}

    /**
     * One row a kind that has a curve of its own, which {@link Chemistry#CUSTOM} does not.
     *
     * @return the rows
     */
    public static List<ChemistryRow> rows() {
        return Arrays.stream(Chemistry.values())
                .filter(chemistry -> chemistry != Chemistry.CUSTOM)
                .map(ChemistryRow::of)
                .toList();
    }
}
