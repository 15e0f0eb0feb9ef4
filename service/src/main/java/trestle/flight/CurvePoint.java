package trestle.flight;

/**
 * One point of the curves over airspeed.
 *
 * @param airspeedMPerS airspeed, m/s
 * @param powerW pack power, W
 * @param enduranceS time to the reserve, s; 0 where the store cannot give the power
 * @param groundRangeM distance over the ground, m; 0 where the wind is not overcome
 */
public record CurvePoint(double airspeedMPerS, double powerW, double enduranceS, double groundRangeM) {}
