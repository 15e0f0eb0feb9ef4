package trestle.massbalance;

import java.util.Optional;

/**
 * Where the CG would leave the aircraft neutrally stable, stick fixed, with the numbers it was made
 * of.
 *
 * @param armM neutral point, m aft of the datum
 * @param toleranceM what it may be off by, a bound of two standard deviations, m
 * @param wingLiftSlopePerRad lift slope of the wing, per rad
 * @param tailLiftSlopePerRad lift slope of the tail, per rad; 0 without one
 * @param downwashGradient change of downwash at the tail with angle of attack; 0 without a tail
 * @param tailVolumeRatio tail area that acts in pitch times its lever over wing area times mean chord; 0 without one
 * @param tailLiftRatio lift slope of the tail in the downwash over that of the wing, on one area; 0 without a tail
 * @param fuselageM how far the fuselage takes the wing's own neutral point forward, m; 0 where its shape is not given
 */
public record NeutralPoint(
        double armM,
        double toleranceM,
        double wingLiftSlopePerRad,
        double tailLiftSlopePerRad,
        double downwashGradient,
        double tailVolumeRatio,
        double tailLiftRatio,
        double fuselageM) {
    /** What a tail's efficiency may be off by; judgement, no source. */
    static final double EFFICIENCY_TOLERANCE = 0.1;

    /** What the downwash gradient may be off by; judgement, no source. */
    static final double DOWNWASH_TOLERANCE = 0.05;

    /** What the ratio of the lift slopes may be off by, as a share of it; judgement, no source. */
    static final double SLOPE_RATIO_TOLERANCE = 0.05;

    /** What fuselage and propeller may be off by, as a share of the mean chord; judgement, no source. */
    static final double BODY_TOLERANCE_FRACTION = 0.015;

    /**
     * Neutral point of a wing with what stands behind it, as {@link PitchStability#shiftM} has it, and the shift that the
     * request adds.
     *
     * @param wing the wing
     * @param tail the tail, or that there is none
     * @param fuselage its shape, where it is known
     * @return the neutral point; empty for a tail that is not behind the wing's quarter MAC: a
     *     canard flies in no downwash and the wing in the canard's, which this model does not cover
     */
    public static Optional<NeutralPoint> of(Wing wing, TailArrangement tail, Optional<Fuselage> fuselage) {
        Planform planform = Planform.of(wing);
        double wingSlope = LiftSlope.perRad(
                planform.aspectRatio(), planform.halfChordSweepTangent(), LiftSlope.SECTION_SLOPE_RATIO);
        double fuselageM = fuselage.map(f -> f.forwardShiftM(wing.rootQuarterChordArmM(), planform.areaM2(), wingSlope))
                .orElse(0.0);
        double addedM = tail.fuselageShiftFraction() * planform.meanAerodynamicChordM();
        double bodyToleranceM = BODY_TOLERANCE_FRACTION * planform.meanAerodynamicChordM();
        if (!(tail instanceof Tail behind)) {
            double armM = planform.quarterMacArmM() - fuselageM + addedM;
            return Optional.of(new NeutralPoint(armM, bodyToleranceM, wingSlope, 0, 0, 0, 0, fuselageM));
        }
        double leverM = behind.quarterChordArmM() - planform.quarterMacArmM();
        if (leverM <= 0) {
            return Optional.empty();
        }
        double areaRatio = behind.areaInPitchM2() / planform.areaM2();
        double tailSlope = LiftSlope.perRad(behind.aspectRatio(), 0, LiftSlope.SECTION_SLOPE_RATIO);
        double slopeRatio = tailSlope / wingSlope;
        double downwash = LiftSlope.downwashGradient(
                wingSlope, planform.aspectRatio(), wing.heightOfM(behind) / planform.spanM());
        double efficiency = behind.efficiencyRatio();
        double ratio = PitchStability.tailLiftRatio(efficiency, areaRatio, slopeRatio, downwash);
        double perRatioM = PitchStability.shiftPerTailLiftRatioM(ratio, leverM, fuselageM);
        double ratioTolerance = Math.hypot(
                Math.hypot(ratio * EFFICIENCY_TOLERANCE / efficiency, ratio * SLOPE_RATIO_TOLERANCE),
                efficiency * areaRatio * slopeRatio * DOWNWASH_TOLERANCE);
        return Optional.of(new NeutralPoint(
                planform.quarterMacArmM() + PitchStability.shiftM(ratio, leverM, fuselageM) + addedM,
                Math.hypot(perRatioM * ratioTolerance, bodyToleranceM),
                wingSlope,
                tailSlope,
                downwash,
                areaRatio * leverM / planform.meanAerodynamicChordM(),
                ratio,
                fuselageM));
    }
}
