package trestle.telemetry;

/**
 * Resistance of pack and leads as the voltage sensor sees it, over one row of the log at steps of load.
 *
 * @param resistanceOhm slope of voltage over current, Ω
 * @param medianOhm median of the steps' own ratios, Ω
 * @param deviationOhm standard deviation of the slope, Ω
 * @param stepCount steps of load
 */
public record PackResistance(double resistanceOhm, double medianOhm, double deviationOhm, int stepCount) {}
