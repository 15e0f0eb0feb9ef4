package trestle.structure;

import java.util.OptionalDouble;

/**
 * What a landing does.
 *
 * @param sinkMPerS rate of sink, m/s
 * @param energyJ to be taken up, J
 * @param loadFactor of what is aboard, ground and lift together, multiples of g
 * @param forwardLoadFactor of the slide; absent where it is not described
 * @param rootBendingDownNm wing's own mass less its lift, N m
 * @param rootReserve of the spar at the root under it; absent where it does not bend down or no spar stands
 */
public record LandingLoad(
        double sinkMPerS,
        double energyJ,
        double loadFactor,
        OptionalDouble forwardLoadFactor,
        double rootBendingDownNm,
        OptionalDouble rootReserve) {
    /** {@code ½ m w²}. */
    static double energyJ(double massKg, double sinkMPerS) {
        return massKg * sinkMPerS * sinkMPerS / 2;
    }

    /** What stopping adds: {@code w² / (2 g s η)}. */
    static double increment(double sinkMPerS, double stoppingM, double efficiency) {
        return Flight.pull(sinkMPerS, stoppingM) / efficiency;
    }
}
