package trestle.massbalance;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A horizontal tail, or a V-tail, behind the wing.
 *
 * @param areaM2 area, m², above 0: both panels as they are where a dihedral is given, else as seen from above
 * @param spanM span, m, above 0: along the panels where a dihedral is given, else as seen from above
 * @param quarterChordArmM its quarter mean chord, m aft of the datum
 * @param verticalM its height above the reference line, m; empty where nobody measured it
 * @param dihedralRad slope of each panel, rad, 0 to 80°; empty for a flat tail, or for a V-tail described by its projection
 * @param efficiencyRatio dynamic pressure at the tail over that of the free stream, above 0 to 1.2
 * @param fuselageShiftFraction what is added to the neutral point, as a fraction of the wing's mean chord, −0.5 to 0.5
 */
public record Tail(
        double areaM2,
        double spanM,
        double quarterChordArmM,
        OptionalDouble verticalM,
        OptionalDouble dihedralRad,
        double efficiencyRatio,
        double fuselageShiftFraction)
        implements TailArrangement {
    /** A tail in the wake of wing and fuselage; common practice, no source. */
    public static final double USUAL_EFFICIENCY_RATIO = 0.9;

    private static final double GREATEST_EFFICIENCY_RATIO = 1.2;
    private static final double GREATEST_SHIFT_FRACTION = 0.5;
    private static final double STEEPEST_RAD = Math.toRadians(80);

    /** Checks the physics. */
    public Tail {
        Guard.positive("areaM2", areaM2);
        Guard.positive("spanM", spanM);
        Guard.finite("quarterChordArmM", quarterChordArmM);
        verticalM.ifPresent(value -> Guard.finite("verticalM", value));
        dihedralRad.ifPresent(value -> Guard.within("dihedralRad", value, 0, STEEPEST_RAD));
        Guard.positive("efficiencyRatio", efficiencyRatio);
        Guard.within("efficiencyRatio", efficiencyRatio, 0, GREATEST_EFFICIENCY_RATIO);
        Guard.within("fuselageShiftFraction", fuselageShiftFraction, -GREATEST_SHIFT_FRACTION, GREATEST_SHIFT_FRACTION);
    }

    /**
     * A flat tail of unknown height.
     *
     * @param areaM2 area seen from above, m²
     * @param spanM span, m
     * @param quarterChordArmM its quarter mean chord, m aft of the datum
     * @param efficiencyRatio dynamic pressure at the tail over that of the free stream
     * @param fuselageShiftFraction what is added to the neutral point, as a fraction of the wing's mean chord
     */
    public Tail(
            double areaM2,
            double spanM,
            double quarterChordArmM,
            double efficiencyRatio,
            double fuselageShiftFraction) {
        this(
                areaM2,
                spanM,
                quarterChordArmM,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                efficiencyRatio,
                fuselageShiftFraction);
    }

    /**
     * The area that acts in pitch.
     *
     * @return area, m²
     */
    double areaInPitchM2() {
        return PitchStability.areaInPitchM2(areaM2, dihedralRad.orElse(0));
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
