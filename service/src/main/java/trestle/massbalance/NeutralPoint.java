package trestle.massbalance;

import java.util.Optional;

/**
 * Where the CG would leave the aircraft neutrally stable, stick fixed, with the numbers it was made
 * of.
 *
 * @param armM neutral point, m aft of the datum
 * @param wingLiftSlopePerRad lift slope of the wing, per rad
 * @param tailLiftSlopePerRad lift slope of the tail, per rad; 0 without one
 * @param downwashGradient change of downwash at the tail with angle of attack; 0 without a tail
 * @param tailVolumeRatio tail area times its arm over wing area times mean chord; 0 without one
 */
public record NeutralPoint(
        double armM,
        double wingLiftSlopePerRad,
        double tailLiftSlopePerRad,
        double downwashGradient,
        double tailVolumeRatio) {
    /**
     * Neutral point of a wing with what stands behind it: {@code xn = x(¼) + c (η V (ah / aw) (1 −
     * dε/dα) + fuselage)}, [3].
     *
     * @param planform the wing
     * @param tail the tail, or that there is none
     * @return the neutral point; empty for a tail that is not behind the wing's quarter MAC: a
     *     canard flies in no downwash and the wing in the canard's, which this model does not cover
     */
    public static Optional<NeutralPoint> of(Planform planform, TailArrangement tail) {
        double wingSlope = LiftSlope.perRad(
                planform.aspectRatio(), planform.halfChordSweepTangent(), LiftSlope.SECTION_SLOPE_RATIO);
        double fuselageM = tail.fuselageShiftFraction() * planform.meanAerodynamicChordM();
        if (!(tail instanceof Tail behind)) {
            return Optional.of(new NeutralPoint(planform.quarterMacArmM() + fuselageM, wingSlope, 0, 0, 0));
        }
        double leverM = behind.quarterChordArmM() - planform.quarterMacArmM();
        if (leverM <= 0) {
            return Optional.empty();
        }
        double volume = behind.areaM2() * leverM / (planform.areaM2() * planform.meanAerodynamicChordM());
        double tailSlope = LiftSlope.perRad(behind.aspectRatio(), 0, LiftSlope.SECTION_SLOPE_RATIO);
        double downwash = LiftSlope.downwashGradient(wingSlope, planform.aspectRatio());
        double shift = behind.efficiencyRatio() * volume * (tailSlope / wingSlope) * (1 - downwash);
        return Optional.of(new NeutralPoint(
                planform.quarterMacArmM() + shift * planform.meanAerodynamicChordM() + fuselageM,
                wingSlope,
                tailSlope,
                downwash,
                volume));
    }
}
