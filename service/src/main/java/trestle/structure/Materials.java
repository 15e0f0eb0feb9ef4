package trestle.structure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The table of materials: typical strengths, most of them from memory, and a stated knock-down for unknown batches, bond
 * lines, holes, damp and age, which is an engineering assumption. A maker's data sheet goes before all of it.
 */
public final class Materials {
    private static final double MPA = 1e6;
    private static final String TSAI =
            "S. Tsai, H. Hahn, Introduction to Composite Materials, 1980 (from memory); knock-down assumed";
    private static final String HANDBOOK = "MIL-HDBK-5H (from memory); yield at limit load, ultimate at breaking load";

    private static final List<Material> ALL = List.of(
            composite(
                    "carbon_ud",
                    new double[] {103000, 7400, 1277, 572, 60, 0.5, 0.4},
                    "moduli, tension and compression of one tested carbon-epoxy, Acta Mechanica et Automatica 2025, doi"
                            + " 10.2478/ama-2025-0022; shear from memory; knock-down assumed"),
            composite("carbon_ud_aerospace", new double[] {181000, 10300, 1500, 1500, 68, 0.5, 0.5}, TSAI),
            composite(
                    "carbon_wrapped",
                    new double[] {70000, 40000, 600, 450, 80, 0.5, 0.5},
                    "from memory, within 30 %; knock-down assumed"),
            composite("glass_ud", new double[] {38600, 8270, 1062, 610, 72, 0.5, 0.5}, TSAI),
            metal("aluminium_6061_t6", 68900, 290, 241, 186),
            metal("aluminium_2024_t3", 72400, 441, 290, 262),
            metal("steel_4130_normalised", 200000, 655, 517, 379),
            wood(
                    "sitka_spruce",
                    new double[] {10800, 70, 38.7, 7.9, 0.6},
                    "FPL Wood Handbook, table 5-3a, 12 % moisture (from memory); knock-down assumed"),
            wood(
                    "balsa",
                    new double[] {3400, 21.6, 14.9, 2.1, 0.5},
                    "FPL Wood Handbook, table 5-5a, modulus and compression second-hand, the rest from memory; varies"
                            + " twofold with density; knock-down assumed"));

    private Materials() {}

    /**
     * All of them.
     *
     * @return in the order of the table
     */
    public static List<Material> all() {
        return ALL;
    }

    /**
     * One of them.
     *
     * @param name its name
     * @return empty where the table has none of that name
     */
    public static Optional<Material> named(String name) {
        return ALL.stream().filter(m -> m.name().equals(name)).findFirst();
    }

    private static Material composite(String name, double[] v, String source) {
        return new Material(
                name,
                v[0] * MPA,
                OptionalDouble.of(v[1] * MPA),
                v[2] * MPA,
                v[3] * MPA,
                v[4] * MPA,
                OptionalDouble.empty(),
                v[5],
                v[6],
                source);
    }

    private static Material metal(String name, double modulus, double ultimate, double yield, double shear) {
        return new Material(
                name,
                modulus * MPA,
                OptionalDouble.empty(),
                ultimate * MPA,
                yield * MPA,
                shear * MPA,
                OptionalDouble.of(yield * MPA),
                1,
                1,
                HANDBOOK);
    }

    private static Material wood(String name, double[] v, String source) {
        return new Material(
                name,
                v[0] * MPA,
                OptionalDouble.empty(),
                v[1] * MPA,
                v[2] * MPA,
                v[3] * MPA,
                OptionalDouble.empty(),
                v[4],
                v[4],
                source);
    }
}
