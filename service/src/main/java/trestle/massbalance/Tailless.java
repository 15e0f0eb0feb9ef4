package trestle.massbalance;

import trestle.numeric.Guard;

/**
 * A flying wing: no horizontal tail at all.
 *
 * @param fuselageShiftFraction what fuselage and propeller add to the neutral point, as a fraction
 *     of the wing's mean chord, −0.5 to 0.5
 */
public record Tailless(double fuselageShiftFraction) implements TailArrangement {
    private static final double GREATEST_SHIFT_FRACTION = 0.5;

    /** Checks the physics. */
    public Tailless {
        Guard.within("fuselageShiftFraction", fuselageShiftFraction, -GREATEST_SHIFT_FRACTION, GREATEST_SHIFT_FRACTION);
    }
}
