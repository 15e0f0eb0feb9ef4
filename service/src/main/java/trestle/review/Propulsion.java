package trestle.review;

import java.util.OptionalDouble;
import trestle.flight.PropulsiveEfficiency;
import trestle.numeric.Guard;

/**
 * What turns pack power into thrust.
 *
 * @param efficiency from pack power to thrust power
 * @param fullThrottlePowerW power at full throttle, all motors together, W; empty where not
 *     measured
 * @param fullThrottleDurationS how long full throttle is held in one go, s, above 0
 */
public record Propulsion(
        PropulsiveEfficiency efficiency,
        OptionalDouble fullThrottlePowerW,
        double fullThrottleDurationS) {
    /** Checks the physics. */
    public Propulsion {
        fullThrottlePowerW.ifPresent(value -> Guard.positive("fullThrottlePowerW", value));
        Guard.positive("fullThrottleDurationS", fullThrottleDurationS);
    }
}
