package trestle.structure;

import java.util.List;
import java.util.Optional;

/**
 * Foam that a joiner presses on: its stress at 10 % crushing, Pa.
 *
 * @param name kind and density in kg/m³
 * @param crushingPa stress at 10 % crushing, Pa
 * @param source where it is from
 */
public record FoamSocket(String name, double crushingPa, String source) {
    /** Share that is counted on; an engineering assumption. */
    public static final double KNOCKDOWN = 0.5;

    private static final String MINIMA = "ASTM C578-10 minima, second-hand; knock-down assumed";

    private static final List<FoamSocket> ALL = List.of(
            new FoamSocket("eps_18", 0.090e6, MINIMA),
            new FoamSocket("eps_22", 0.104e6, MINIMA),
            new FoamSocket("eps_29", 0.173e6, MINIMA),
            new FoamSocket("xps_21", 0.104e6, MINIMA),
            new FoamSocket("xps_25", 0.173e6, MINIMA),
            new FoamSocket("xps_29", 0.276e6, MINIMA),
            new FoamSocket("xps_35", 0.414e6, MINIMA),
            new FoamSocket("xps_48", 0.690e6, MINIMA),
            new FoamSocket("epp_30", 0.15e6, "from memory; knock-down assumed"));

    /**
     * All of them.
     *
     * @return in the order of the table
     */
    public static List<FoamSocket> all() {
        return ALL;
    }

    /**
     * One of them.
     *
     * @param name kind and density
     * @return empty where the table has none of that name
     */
    public static Optional<FoamSocket> named(String name) {
        return ALL.stream().filter(f -> f.name().equals(name)).findFirst();
    }
}
