package trestle.wiring;

import java.util.Arrays;
import java.util.List;

/** The kinds of insulation, as reference rows. */
public final class Insulations {
    private Insulations() {}

    /**
     * One row a kind, coolest rating first.
     *
     * @return the rows
     */
    public static List<InsulationRow> rows() {
        return Arrays.stream(Insulation.values()).map(InsulationRow::of).toList();
    }
}
