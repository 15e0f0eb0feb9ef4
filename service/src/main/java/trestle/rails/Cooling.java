package trestle.rails;

import trestle.numeric.Guard;

/**
 * How a regulator gets rid of its heat.
 *
 * @param thermalResistanceKPerW from the hottest part to the air, all stages in series, K/W, above
 *     0
 * @param ambientTemperatureK air about it, K, above 0
 * @param highestTemperatureK maximum temperature of its hottest part, K, above 0
 */
public record Cooling(double thermalResistanceKPerW, double ambientTemperatureK, double highestTemperatureK) {
    /** Checks the physics. */
    public Cooling {
        Guard.positive("thermalResistanceKPerW", thermalResistanceKPerW);
        Guard.positive("ambientTemperatureK", ambientTemperatureK);
        Guard.positive("highestTemperatureK", highestTemperatureK);
    }

    /**
     * Temperature of the hottest part: {@code Ta + P R}, [1].
     *
     * @param heatW heat, W, 0 or more
     * @return temperature, K
     */
    public double temperatureK(double heatW) {
        return ambientTemperatureK + heatW * thermalResistanceKPerW;
    }

    /**
     * Greatest thermal resistance that a heat can leave by: {@code (Tmax − Ta) / P}, [1]. What the
     * stages up to the heat sink take of it is not the sink's to have.
     *
     * @param heatW heat, W, above 0
     * @param ambientTemperatureK air, K
     * @param highestTemperatureK maximum temperature of the hottest part, K
     * @return thermal resistance, K/W; 0 or below where the air is too hot already
     */
    public static double greatestResistanceKPerW(double heatW, double ambientTemperatureK, double highestTemperatureK) {
        return (highestTemperatureK - ambientTemperatureK) / heatW;
    }
}
