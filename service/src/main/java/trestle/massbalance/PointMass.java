package trestle.massbalance;

import trestle.numeric.Guard;

/**
 * A mass at a point.
 *
 * @param massKg mass, kg, above 0
 * @param armM distance aft of the datum, m
 * @param lateralM distance to the right of the plane of symmetry, m
 * @param verticalM height above the reference line, m
 */
public record PointMass(double massKg, double armM, double lateralM, double verticalM) {
    /** Checks the physics. */
    public PointMass {
        Guard.positive("massKg", massKg);
        Guard.finite("armM", armM);
        Guard.finite("lateralM", lateralM);
        Guard.finite("verticalM", verticalM);
    }

    /**
     * Moment about the datum: mass times arm, [1].
     *
     * @return moment, kg m
     */
    public double momentKgM() {
        return massKg * armM;
    }
}
