package trestle.magnetics;

/**
 * What leads do to the compass.
 *
 * @param fieldT flux density at the compass, T
 * @param fieldFractionOfEarth over the earth's horizontal field
 * @param headingErrorRad heading error, rad
 * @param leastDistanceM distance at which the heading error is the allowed one, m; 0 where nothing
 *     flows
 */
public record Disturbance(double fieldT, double fieldFractionOfEarth, double headingErrorRad, double leastDistanceM) {}
