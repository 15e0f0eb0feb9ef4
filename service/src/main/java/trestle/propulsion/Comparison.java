package trestle.propulsion;

import trestle.numeric.Guard;

/**
 * How a propeller compares with the general form of its size.
 *
 * @param powerRatio shaft power at a thrust and airspeed over that of the form, above 0
 * @param rotationRatio rotation at a thrust and airspeed over that of the form, above 0
 */
public record Comparison(double powerRatio, double rotationRatio) {
    /** As the form has it. */
    public static final Comparison EQUAL = new Comparison(1, 1);

    /** Checks the physics. */
    public Comparison {
        Guard.positive("powerRatio", powerRatio);
        Guard.positive("rotationRatio", rotationRatio);
    }

    /** The map of a propeller of this comparison. */
    PropellerMap of(PropellerMap modelled) {
        return equals(EQUAL) ? modelled : new ComparedMap(modelled, powerRatio, rotationRatio);
    }
}
