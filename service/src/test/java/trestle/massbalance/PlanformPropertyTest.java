package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class PlanformPropertyTest {

    @Property(tries = 200)
    void meanChordOfARectangleIsItsChord(
            @ForAll @DoubleRange(min = 0.05, max = 1) double chordM,
            @ForAll @DoubleRange(min = 0.2, max = 3) double spanM,
            @ForAll @DoubleRange(min = 0, max = 0.5) double dihedralRad) {
        Planform planform = Planform.of(new Wing(List.of(new Panel(chordM, chordM, spanM, 0, dihedralRad)), 0.4));
        assertThat(planform.meanAerodynamicChordM()).isCloseTo(chordM, within(1e-12));
        assertThat(planform.macLeadingEdgeArmM()).isCloseTo(0.4, within(1e-12));
        assertThat(planform.spanM()).isCloseTo(2 * spanM * Math.cos(dihedralRad), within(1e-12));
        assertThat(planform.aspectRatio()).isCloseTo(planform.spanM() / chordM, within(1e-9));
    }

    @Property(tries = 200)
    void splittingAPanelChangesNothing(
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double rootM,
            @ForAll @DoubleRange(min = 0, max = 0.8) double tipM,
            @ForAll @DoubleRange(min = -0.3, max = 0.8) double sweepM,
            @ForAll @DoubleRange(min = 0, max = 0.4) double dihedralRad,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double at) {
        double spanM = 1.6;
        double middleM = rootM + at * (tipM - rootM);
        Planform whole = Planform.of(new Wing(List.of(new Panel(rootM, tipM, spanM, sweepM, dihedralRad)), 0.5));
        Planform split = Planform.of(new Wing(
                List.of(
                        new Panel(rootM, middleM, at * spanM, at * sweepM, dihedralRad),
                        new Panel(middleM, tipM, (1 - at) * spanM, (1 - at) * sweepM, dihedralRad)),
                0.5));
        assertThat(split.areaM2()).isCloseTo(whole.areaM2(), within(1e-12));
        assertThat(split.meanAerodynamicChordM()).isCloseTo(whole.meanAerodynamicChordM(), within(1e-12));
        assertThat(split.macLeadingEdgeArmM()).isCloseTo(whole.macLeadingEdgeArmM(), within(1e-12));
        assertThat(split.macLateralM()).isCloseTo(whole.macLateralM(), within(1e-12));
        assertThat(split.halfChordSweepTangent()).isCloseTo(whole.halfChordSweepTangent(), within(1e-9));
    }

    @Property(tries = 100)
    void armAndShareOfTheMeanChordUndoEachOther(@ForAll @DoubleRange(min = -1, max = 3) double armM) {
        Planform planform = Planform.of(new Wing(List.of(new Panel(0.35, 0.2, 1.5, 0.2, 0)), 0.4));
        assertThat(planform.armM(planform.macFraction(armM))).isCloseTo(armM, within(1e-12));
    }

    @Property(tries = 200)
    void liftSlopeGrowsWithAspectRatioAndFallsWithSweep(
            @ForAll @DoubleRange(min = 0.5, max = 30) double aspectRatio,
            @ForAll @DoubleRange(min = 0, max = 1) double sweepTangent) {
        double slope = LiftSlope.perRad(aspectRatio, sweepTangent, LiftSlope.SECTION_SLOPE_RATIO);
        assertThat(LiftSlope.perRad(1.1 * aspectRatio, sweepTangent, 0.95)).isGreaterThan(slope);
        assertThat(LiftSlope.perRad(aspectRatio, sweepTangent + 0.1, 0.95)).isLessThan(slope);
        assertThat(LiftSlope.downwashGradient(slope, aspectRatio, 0)).isBetween(0.0, 1.0);
    }

    /** MG22: the neutral point grows with area, lever and efficiency, lies between wing and tail, and without a tail's area on the wing. */
    @Property(tries = 200)
    void aLargerOrFurtherTailMovesTheNeutralPointAft(
            @ForAll @DoubleRange(min = 0.03, max = 0.9) double areaM2,
            @ForAll @DoubleRange(min = 0.8, max = 2.5) double armM,
            @ForAll @DoubleRange(min = 0.4, max = 1.1) double efficiency) {
        double here = pointM(areaM2, armM, efficiency);
        assertThat(pointM(1.1 * areaM2, armM, efficiency)).isGreaterThan(here);
        assertThat(pointM(areaM2, armM + 0.1, efficiency)).isGreaterThan(here);
        assertThat(pointM(areaM2, armM, efficiency + 0.05)).isGreaterThan(here);
        assertThat(here).isLessThan(armM);
        double alone = NeutralPoint.of(WING, new Tailless(0), Optional.empty())
                .orElseThrow()
                .armM();
        assertThat(here).isGreaterThan(alone);
        assertThat(pointM(1e-9, armM, efficiency)).isCloseTo(alone, within(1e-7));
    }

    private static final Wing WING = new Wing(List.of(new Panel(0.3, 0.25, 1.5, 0.02, 0)), 0.3);

    private static double pointM(double areaM2, double armM, double efficiency) {
        double aspectRatio = 4;
        Tail tail = new Tail(areaM2, Math.sqrt(aspectRatio * areaM2), armM, efficiency, 0);
        return NeutralPoint.of(WING, tail, Optional.empty()).orElseThrow().armM();
    }
}
