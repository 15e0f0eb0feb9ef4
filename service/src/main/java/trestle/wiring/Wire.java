package trestle.wiring;

import trestle.numeric.Guard;

/**
 * An insulated wire.
 *
 * @param gauge its conductor
 * @param insulation its insulation
 * @param wallM wall of the insulation, m, 0.05 to 10 mm
 */
public record Wire(Gauge gauge, Insulation insulation, double wallM) {
    private static final double THINNEST_WALL_M = 0.05e-3;
    private static final double THICKEST_WALL_M = 10e-3;

    /** Checks the physics. */
    public Wire {
        Guard.present("gauge", gauge);
        Guard.present("insulation", insulation);
        Guard.within("insulationThicknessM", wallM, THINNEST_WALL_M, THICKEST_WALL_M);
    }

    /**
     * A wire with the wall that is usual for its size and material.
     *
     * @param gauge its conductor
     * @param insulation its insulation
     * @return the wire
     */
    public static Wire usual(Gauge gauge, Insulation insulation) {
        return new Wire(gauge, insulation, insulation.material().typicalWallM(gauge.areaM2()));
    }

    /**
     * Diameter over the insulation.
     *
     * @return diameter, m
     */
    public double outerDiameterM() {
        return gauge.conductorDiameterM() + 2 * wallM;
    }

    /**
     * Mass of one metre: copper and insulation.
     *
     * @return mass, kg/m
     */
    public double massKgPerM() {
        return copperKgPerM() + insulationKgPerM();
    }

    /**
     * Resistance of one metre at a temperature.
     *
     * @param temperatureK conductor temperature, K
     * @return resistance, Ω/m
     */
    public double resistancePerMOhm(double temperatureK) {
        return gauge.resistancePerMOhm() * Copper.resistanceRatio(temperatureK);
    }

    /**
     * Heat that warms one metre of copper by one kelvin.
     *
     * @return capacity, J/(m K)
     */
    public double copperCapacityJPerMK() {
        return copperKgPerM() * Copper.SPECIFIC_HEAT_J_PER_KG_K;
    }

    /**
     * Heat that warms one metre of insulation by one kelvin.
     *
     * @return capacity, J/(m K)
     */
    public double insulationCapacityJPerMK() {
        return insulationKgPerM() * InsulationMaterial.SPECIFIC_HEAT_J_PER_KG_K;
    }

    /**
     * Thermal resistance of the insulation: {@code ln(D / d) / (2 π k)}, [4].
     *
     * @return resistance, K m/W
     */
    public double insulationResistanceKMPerW() {
        return Math.log(outerDiameterM() / gauge.conductorDiameterM())
                / (2 * Math.PI * insulation.material().conductivityWPerMK());
    }

    private double copperKgPerM() {
        return gauge.areaM2() * Copper.DENSITY_KG_PER_M3;
    }

    private double insulationKgPerM() {
        double areaM2 = Math.PI * wallM * (gauge.conductorDiameterM() + wallM);
        return areaM2 * insulation.material().densityKgPerM3();
    }
}
