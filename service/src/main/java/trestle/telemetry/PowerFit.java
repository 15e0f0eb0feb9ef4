package trestle.telemetry;

/**
 * Power of level flight, {@code P = P0 + k3 ρ V³ + k1 m²/(ρ V)}, with how sure it is.
 *
 * @param systemsPowerW P0, W
 * @param parasiteAreaM2 k3, m²
 * @param inducedFactorPerS4 k1, 1/s⁴
 * @param massKg mass flown, kg
 * @param parasiteDeviation standard deviation of k3 over k3
 * @param inducedDeviation standard deviation of k1 over k1
 * @param correlation of the two, −1 to 1
 * @param rSquared share of the variance of power that it explains
 * @param rmsW root mean square of what is left, W
 * @param sampleCount stretches it rests on; 0 where it rests on a mean alone
 * @param leastMPerS slowest of them, m/s
 * @param greatestMPerS fastest of them, m/s
 */
public record PowerFit(
        double systemsPowerW,
        double parasiteAreaM2,
        double inducedFactorPerS4,
        double massKg,
        double parasiteDeviation,
        double inducedDeviation,
        double correlation,
        double rSquared,
        double rmsW,
        int sampleCount,
        double leastMPerS,
        double greatestMPerS) {
    /**
     * Power at an airspeed at the mass flown.
     *
     * @param airspeedMPerS airspeed, m/s
     * @param densityKgPerM3 density, kg/m³
     * @return power, W
     */
    public double powerW(double airspeedMPerS, double densityKgPerM3) {
        return systemsPowerW + parasiteW(airspeedMPerS, densityKgPerM3) + inducedW(airspeedMPerS, densityKgPerM3);
    }

    /**
     * Standard deviation of that power.
     *
     * @param airspeedMPerS airspeed, m/s
     * @param densityKgPerM3 density, kg/m³
     * @return deviation, W
     */
    public double deviationW(double airspeedMPerS, double densityKgPerM3) {
        double parasite = parasiteDeviation * parasiteW(airspeedMPerS, densityKgPerM3);
        double induced = inducedDeviation * inducedW(airspeedMPerS, densityKgPerM3);
        return Math.sqrt(Math.max(0, parasite * parasite + induced * induced + 2 * correlation * parasite * induced));
    }

    private double parasiteW(double v, double density) {
        return parasiteAreaM2 * density * v * v * v;
    }

    private double inducedW(double v, double density) {
        return inducedFactorPerS4 * massKg * massKg / (density * v);
    }
}
