package trestle.review;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * Drag and lift of the whole aircraft, on the wing area.
 *
 * @param zeroLiftCoefficient drag coefficient at no lift, above 0
 * @param oswaldEfficiency how near drag due to lift comes to that of an elliptic wing, above 0
 * @param maxLiftCoefficient greatest lift coefficient, above 0
 * @param neverExceedMPerS airspeed that it must never exceed, m/s, above 0; empty where nobody has said
 */
public record Aerodynamics(
        double zeroLiftCoefficient,
        double oswaldEfficiency,
        double maxLiftCoefficient,
        OptionalDouble neverExceedMPerS) {
    /** Checks the physics. */
    public Aerodynamics {
        Guard.positive("zeroLiftCoefficient", zeroLiftCoefficient);
        Guard.positive("oswaldEfficiency", oswaldEfficiency);
        Guard.positive("maxLiftCoefficient", maxLiftCoefficient);
        neverExceedMPerS.ifPresent(it -> Guard.positive("neverExceedMPerS", it));
    }
}
