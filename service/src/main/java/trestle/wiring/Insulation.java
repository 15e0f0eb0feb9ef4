package trestle.wiring;

import trestle.units.Temperature;

/** Kinds of insulation, by material and by the temperature that the conductor may reach. */
public enum Insulation {
    /** PVC for 80 °C. */
    PVC_80(InsulationMaterial.PVC, 80),
    /** PVC for 105 °C. */
    PVC_105(InsulationMaterial.PVC, 105),
    /** Cross-linked polyethylene for 125 °C. */
    XLPE_125(InsulationMaterial.XLPE, 125),
    /** ETFE for 150 °C. */
    ETFE_150(InsulationMaterial.ETFE, 150),
    /** Silicone rubber for 200 °C. */
    SILICONE_200(InsulationMaterial.SILICONE, 200),
    /** PTFE on silver-plated or tinned copper for 200 °C. */
    PTFE_200(InsulationMaterial.PTFE, 200),
    /** PTFE on nickel-plated copper for 260 °C. */
    PTFE_260(InsulationMaterial.PTFE, 260);

    private final InsulationMaterial material;
    private final double ratingTemperatureK;

    Insulation(InsulationMaterial material, double ratingC) {
        this.material = material;
        this.ratingTemperatureK = Temperature.kFromC(ratingC);
    }

    /**
     * What it is made of.
     *
     * @return the material
     */
    public InsulationMaterial material() {
        return material;
    }

    /**
     * The greatest conductor temperature it is rated for.
     *
     * @return temperature, K
     */
    public double ratingTemperatureK() {
        return ratingTemperatureK;
    }
}
