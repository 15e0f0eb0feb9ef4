package trestle.propulsion;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest throttle that keeps a rating, and what is left of the drive there.
 *
 * @param throttleFraction highest share of the supply's voltage, 0 to 1; 0 where no throttle keeps the rating
 * @param rating the rating
 * @param where it is met; empty where full throttle keeps it
 * @param thrustN thrust at rest, N
 * @param staticCurrentA current from the supply at rest, A
 * @param topSpeedMPerS level top speed, m/s; empty where no drag is known or thrust never reaches it
 * @param climbRateMPerS climb rate at the climb speed, m/s, below 0 where it sinks; empty where drag or lift is not
 *     known
 * @param thrustToWeightRatio thrust at rest over weight
 */
public record ThrottleLimit(
        double throttleFraction,
        KeptRating rating,
        Optional<LimitPlace> where,
        OptionalDouble thrustN,
        OptionalDouble staticCurrentA,
        OptionalDouble topSpeedMPerS,
        OptionalDouble climbRateMPerS,
        OptionalDouble thrustToWeightRatio) {

    /** Whether full throttle passes the rating. */
    public boolean limits() {
        return throttleFraction < 1;
    }
}
