package trestle.battery;

/**
 * A segment at the end of a discharge.
 *
 * @param cellVoltageV voltage of one of its cells under load, V
 * @param stateOfChargeFraction charge left in it
 * @param temperatureK its temperature, K
 */
public record SegmentOutcome(double cellVoltageV, double stateOfChargeFraction, double temperatureK) {}
