package trestle.launch;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What the aircraft and its hook are good for.
 *
 * @param maxLoadFactor acceleration along the launch over that of gravity; empty for what is usual
 * @param maxHookForceN force on the hook or the carriage, N; empty where nobody has said
 * @param neverExceedMPerS airspeed that it must never exceed, m/s; empty where nobody has said
 */
public record LaunchLimits(
        OptionalDouble maxLoadFactor, OptionalDouble maxHookForceN, OptionalDouble neverExceedMPerS) {
    /** Nothing is said. */
    public static final LaunchLimits NONE =
            new LaunchLimits(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** Checks the physics. */
    public LaunchLimits {
        maxLoadFactor.ifPresent(n -> Guard.positive("maxLoadFactor", n));
        maxHookForceN.ifPresent(f -> Guard.positive("maxHookForceN", f));
        neverExceedMPerS.ifPresent(v -> Guard.positive("neverExceedMPerS", v));
    }
}
