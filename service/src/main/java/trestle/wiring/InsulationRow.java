package trestle.wiring;

/**
 * A line of the reference table of insulations.
 *
 * @param insulation the kind
 * @param material what it is made of
 * @param ratingTemperatureK greatest conductor temperature, K
 * @param conductivityWPerMK thermal conductivity, W/(m K)
 * @param densityKgPerM3 density, kg/m³
 * @param specificHeatJPerKgK specific heat, J/(kg K)
 * @param usualWallM wall that AWG 14 (2.1 mm²) usually has, m
 */
public record InsulationRow(
        Insulation insulation,
        InsulationMaterial material,
        double ratingTemperatureK,
        double conductivityWPerMK,
        double densityKgPerM3,
        double specificHeatJPerKgK,
        double usualWallM) {
    private static final int EXAMPLE_AWG = 14;

    static InsulationRow of(Insulation insulation) {
        InsulationMaterial material = insulation.material();
        return new InsulationRow(
                insulation,
                material,
                insulation.ratingTemperatureK(),
                material.conductivityWPerMK(),
                material.densityKgPerM3(),
                InsulationMaterial.SPECIFIC_HEAT_J_PER_KG_K,
                material.typicalWallM(Gauge.awg(EXAMPLE_AWG).areaM2()));
    }
}
