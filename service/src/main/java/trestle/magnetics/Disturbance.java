package trestle.magnetics;

import java.util.OptionalDouble;

/**
 * What leads do to the compass.
 *
 * @param fieldT flux density at the compass, T
 * @param fieldFractionOfEarth over the earth's horizontal field
 * @param headingErrorRad heading error, rad, 0 to π/2; empty where the field is stronger than the earth's: there is no
 *     heading then
 * @param leastDistanceM distance at which the heading error is the allowed one, m; 0 where nothing
 *     flows
 */
public record Disturbance(
        double fieldT, double fieldFractionOfEarth, OptionalDouble headingErrorRad, double leastDistanceM) {
    /**
     * Whether it turns the compass by more than an angle.
     *
     * @param allowedRad the angle, rad
     * @return true also where there is no heading
     */
    public boolean exceeds(double allowedRad) {
        return headingErrorRad.isEmpty() || headingErrorRad.getAsDouble() > allowedRad;
    }
}
