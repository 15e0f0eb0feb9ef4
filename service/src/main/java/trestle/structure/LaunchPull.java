package trestle.structure;

import java.util.OptionalDouble;

/**
 * What a launch does to the structure, along the flight path.
 *
 * @param kind in a builder's word
 * @param meanLoadFactor mean acceleration, multiples of g
 * @param peakLoadFactor its peak, with the slope of the ramp
 * @param hookForceN greatest force on the hook, N; absent where nothing hooks
 * @param mostLoadFactor what the aircraft is good for, multiples of g
 * @param mostStated whether the request says so
 * @param mostHookN what the hook is good for, N; absent where not stated
 */
public record LaunchPull(
        String kind,
        double meanLoadFactor,
        double peakLoadFactor,
        OptionalDouble hookForceN,
        double mostLoadFactor,
        boolean mostStated,
        OptionalDouble mostHookN) {}
