package trestle.wiring;

import java.util.List;

/**
 * A line of the reference table of power connectors, by the class of current they are sold for.
 *
 * @param ratedCurrentA continuous current, A
 * @param contactResistanceOhm resistance of one clean, fully mated contact, typical of the class, Ω.
 *     Common practice, no source: measure yours
 */
public record ConnectorRow(double ratedCurrentA, double contactResistanceOhm) {
    private static final List<ConnectorRow> ROWS = List.of(
            new ConnectorRow(30, 1.0e-3),
            new ConnectorRow(60, 0.5e-3),
            new ConnectorRow(90, 0.3e-3),
            new ConnectorRow(120, 0.2e-3),
            new ConnectorRow(150, 0.15e-3));

    /**
     * The table.
     *
     * @return smallest first
     */
    public static List<ConnectorRow> rows() {
        return ROWS;
    }
}
