package trestle.wiring;

/** What insulation is made of. Densities are typical values, from memory. */
public enum InsulationMaterial {
    /** Silicone rubber: 5.0 K m/W, [6]. */
    SILICONE(
            0.20,
            1200,
            new double[][] {
                {0.06, 0.25},
                {0.6, 0.45},
                {0.9, 0.55},
                {1.4, 0.70},
                {2.6, 0.85},
                {3.5, 1.0},
                {6.1, 1.2},
                {9, 1.3},
                {14, 1.7},
                {22, 2.0},
                {36, 2.3}
            },
            2.6),
    /** Polyvinyl chloride: 6.0 K m/W, [6]. */
    PVC(0.17, 1400, new double[][] {{1.4, 0.40}, {6.1, 0.80}, {9, 1.15}, {36, 1.5}}, 2.0),
    /** Cross-linked polyethylene: 3.5 K m/W, [6]. */
    XLPE(0.286, 930, new double[][] {{1.4, 0.40}, {6.1, 0.60}, {9, 0.90}, {36, 1.1}}, 1.5),
    /** Ethylene tetrafluoroethylene: 0.24 W/(m K), typical, from memory. */
    ETFE(0.24, 1700, new double[][] {{1.4, 0.20}, {6.1, 0.25}, {9, 0.35}, {36, 0.50}}, 0.6),
    /** Polytetrafluoroethylene: 0.25 W/(m K), typical, from memory. */
    PTFE(0.25, 2150, new double[][] {{1.4, 0.25}, {6.1, 0.30}, {9, 0.40}, {36, 0.50}}, 0.6);

    /** Specific heat of all of them, J/(kg K): typical, from memory. */
    public static final double SPECIFIC_HEAT_J_PER_KG_K = 1200;

    private final double conductivityWPerMK;
    private final double densityKgPerM3;

    /** Copper area up to, mm²; wall, mm. Common practice, no source. */
    private final double[][] typicalWallsMm;

    private final double thickestWallMm;

    InsulationMaterial(
            double conductivityWPerMK, double densityKgPerM3, double[][] typicalWallsMm, double thickestWallMm) {
        this.conductivityWPerMK = conductivityWPerMK;
        this.densityKgPerM3 = densityKgPerM3;
        this.typicalWallsMm = typicalWallsMm;
        this.thickestWallMm = thickestWallMm;
    }

    /**
     * Thermal conductivity.
     *
     * @return conductivity, W/(m K)
     */
    public double conductivityWPerMK() {
        return conductivityWPerMK;
    }

    /**
     * Density.
     *
     * @return density, kg/m³
     */
    public double densityKgPerM3() {
        return densityKgPerM3;
    }

    /**
     * Wall that wire of a size usually has in this material. Common practice, no source.
     *
     * @param areaM2 copper area, m²
     * @return wall, m
     */
    public double typicalWallM(double areaM2) {
        for (double[] row : typicalWallsMm) {
            if (areaM2 <= row[0] * 1e-6) {
                return row[1] * 1e-3;
            }
        }
        return thickestWallMm * 1e-3;
    }
}
