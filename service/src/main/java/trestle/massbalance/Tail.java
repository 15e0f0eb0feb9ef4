package trestle.massbalance;

import trestle.numeric.Guard;

/**
 * A horizontal tail behind the wing.
 *
 * @param areaM2 area seen from above, m², above 0
 * @param spanM span, m, above 0
 * @param quarterChordArmM its quarter mean chord, m aft of the datum
 * @param efficiencyRatio dynamic pressure at the tail over that of the free stream, above 0 to 1.2
 * @param fuselageShiftFraction what fuselage and propeller add to the neutral point, as a fraction
 *     of the wing's mean chord, −0.5 to 0.5
 */
public record Tail(
        double areaM2, double spanM, double quarterChordArmM, double efficiencyRatio, double fuselageShiftFraction)
        implements TailArrangement {
    /** A tail in the wake of wing and fuselage; common practice, no source. */
    public static final double USUAL_EFFICIENCY_RATIO = 0.9;

    private static final double GREATEST_EFFICIENCY_RATIO = 1.2;
    private static final double GREATEST_SHIFT_FRACTION = 0.5;

    /** Checks the physics. */
    public Tail {
        Guard.positive("areaM2", areaM2);
        Guard.positive("spanM", spanM);
        Guard.finite("quarterChordArmM", quarterChordArmM);
        Guard.positive("efficiencyRatio", efficiencyRatio);
        Guard.within("efficiencyRatio", efficiencyRatio, 0, GREATEST_EFFICIENCY_RATIO);
        Guard.within("fuselageShiftFraction", fuselageShiftFraction, -GREATEST_SHIFT_FRACTION, GREATEST_SHIFT_FRACTION);
    }

    /**
     * Aspect ratio: span squared over area.
     *
     * @return aspect ratio
     */
    public double aspectRatio() {
        return spanM * spanM / areaM2;
    }
}
