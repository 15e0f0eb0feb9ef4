package trestle.battery;

/**
 * Kinds of cell with a parameter set. Voltages are common data-sheet limits; specific energies,
 * densities and charging rates are typical values from memory, used only where the cell's own are
 * not given.
 */
public enum Chemistry {
    /** High-energy NMC or NCA cylinder (18650, 21700). */
    LI_ION("nmc", 3.6, 4.2, 2.5, 2.5, 255, 2200, 0.5),
    /** Lithium polymer pouch, cobalt oxide. */
    LIPO("lipo", 3.7, 4.2, 3.0, 2.5, 190, 2000, 1),
    /** Iron phosphate. */
    LFP("lfp", 3.2, 3.65, 2.0, 2.0, 105, 1800, 0.5),
    /** A cell with its own open-circuit curve, over the dynamics of {@link #LI_ION}. */
    CUSTOM("nmc", 3.6, 4.2, 2.5, 2.5, 255, 2200, 0.5);

    private static final double JOULES_PER_WATT_HOUR = 3600;

    private final CellSet set;
    private final double nominalVoltageV;
    private final double fullVoltageV;
    private final double minimumVoltageV;
    private final double overDischargeV;
    private final double specificEnergyJPerKg;
    private final double packedDensityKgPerM3;
    private final double chargeRatePerH;

    Chemistry(
            String set,
            double nominalVoltageV,
            double fullVoltageV,
            double minimumVoltageV,
            double overDischargeV,
            double specificEnergyWhPerKg,
            double packedDensityKgPerM3,
            double chargeRatePerH) {
        this.set = CellSet.read("/trestle/battery/" + set + ".properties");
        this.nominalVoltageV = nominalVoltageV;
        this.fullVoltageV = fullVoltageV;
        this.minimumVoltageV = minimumVoltageV;
        this.overDischargeV = overDischargeV;
        this.specificEnergyJPerKg = specificEnergyWhPerKg * JOULES_PER_WATT_HOUR;
        this.packedDensityKgPerM3 = packedDensityKgPerM3;
        this.chargeRatePerH = chargeRatePerH;
    }

    CellSet set() {
        return set;
    }

    /**
     * Mean voltage of a slow discharge, the figure on the label.
     *
     * @return nominal voltage, V
     */
    public double nominalVoltageV() {
        return nominalVoltageV;
    }

    /**
     * Charging ends here.
     *
     * @return full voltage, V
     */
    public double fullVoltageV() {
        return fullVoltageV;
    }

    /**
     * Minimum voltage of the usual data sheet; energy below a cutoff counts down to here.
     *
     * @return minimum voltage, V
     */
    public double minimumVoltageV() {
        return minimumVoltageV;
    }

    /**
     * Below this a cell is harmed: a discharge is never reported beyond it.
     *
     * @return over-discharge voltage, V
     */
    public double overDischargeV() {
        return overDischargeV;
    }

    /**
     * Energy over mass of a bare cell.
     *
     * @return specific energy, J/kg
     */
    public double specificEnergyJPerKg() {
        return specificEnergyJPerKg;
    }

    /**
     * Mass over the volume that cells take up side by side.
     *
     * @return packed density, kg/m³
     */
    public double packedDensityKgPerM3() {
        return packedDensityKgPerM3;
    }

    /**
     * Charging current over capacity, where the cell's own limit is not given.
     *
     * @return charging rate, 1/h
     */
    public double chargeRatePerH() {
        return chargeRatePerH;
    }
}
