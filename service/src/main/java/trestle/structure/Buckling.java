package trestle.structure;

/** Formulas of thin-walled round tubes; NASA SP-8007, from memory. */
public final class Buckling {
    /** Below this radius over wall neither buckling nor ovalling governs. */
    static final double THIN_WALL = 10;

    private static final double POISSON = 0.3;
    private static final double IN_BENDING = 0.731;
    private static final double IN_COMPRESSION = 0.901;

    private Buckling() {}

    /**
     * Knock-down in bending: {@code γ = 1 − 0.731 (1 − exp(−sqrt(R/t)/16))}.
     *
     * @param radiusOverWall R/t, above 0
     * @return 0 to 1
     */
    public static double bendingKnockdown(double radiusOverWall) {
        return 1 - IN_BENDING * (1 - Math.exp(-Math.sqrt(radiusOverWall) / 16));
    }

    /**
     * The same in compression, 0.901 in place of 0.731.
     *
     * @param radiusOverWall R/t, above 0
     * @return 0 to 1
     */
    public static double axialKnockdown(double radiusOverWall) {
        return 1 - IN_COMPRESSION * (1 - Math.exp(-Math.sqrt(radiusOverWall) / 16));
    }

    /**
     * Stress at which the wall of a tube buckles in bending: {@code γ sqrt(E_axial E_hoop) (t/R) / sqrt(3 (1 − ν²))}.
     *
     * @param material of the tube
     * @param radiusOverWall R/t, above 0
     * @return Pa
     */
    public static double bendingStressPa(Material material, double radiusOverWall) {
        double modulus =
                Math.sqrt(material.modulusPa() * material.transverseModulusPa().orElse(material.modulusPa()));
        return bendingKnockdown(radiusOverWall) * modulus / radiusOverWall / Math.sqrt(3 * (1 - POISSON * POISSON));
    }

    /**
     * Wrinkling of a cap bonded to foam: {@code 0.5 (E_cap E_foam G_foam)^(1/3)}, Hoff and Mautner 1945, from memory.
     *
     * @param capPa modulus of the cap, Pa
     * @param foamPa modulus of the foam, Pa
     * @param foamShearPa shear modulus of the foam, Pa
     * @return Pa
     */
    public static double wrinklingStressPa(double capPa, double foamPa, double foamShearPa) {
        return 0.5 * Math.cbrt(capPa * foamPa * foamShearPa);
    }
}
