package trestle.battery;

/**
 * What surrounds one cell thermally.
 *
 * @param ambientK temperature of the air, K
 * @param startK temperature of the cell at the start, K
 * @param conductanceWPerK heat passed to the air per kelvin above it, W/K
 * @param heatCapacityJPerK heat that warms the cell by one kelvin, J/K; infinite: it stays as it is
 */
record Bath(double ambientK, double startK, double conductanceWPerK, double heatCapacityJPerK) {
    /** A bath so strong that the cell keeps its temperature; for tests and pulses. */
    static Bath keepingAt(double temperatureK) {
        return new Bath(temperatureK, temperatureK, 0, Double.POSITIVE_INFINITY);
    }
}
