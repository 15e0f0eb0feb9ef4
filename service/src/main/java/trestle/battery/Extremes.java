package trestle.battery;

/** The worst that was seen in a stretch of discharge. Not thread-safe; lives inside one run. */
final class Extremes {
    double firstV = Double.NaN;
    double lowestV = Double.POSITIVE_INFINITY;
    double highestA;
    double highestK;

    void see(double voltageV, double currentA, double temperatureK) {
        if (Double.isNaN(firstV)) {
            firstV = voltageV;
        }
        lowestV = Math.min(lowestV, voltageV);
        highestA = Math.max(highestA, currentA);
        highestK = Math.max(highestK, temperatureK);
    }

    void see(Extremes other) {
        see(other.lowestV, other.highestA, other.highestK);
    }
}
