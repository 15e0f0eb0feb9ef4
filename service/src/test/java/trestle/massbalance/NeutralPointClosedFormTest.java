package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The neutral point where symmetry or the definition tells it, and our own working of the formula; nothing published. */
class NeutralPointClosedFormTest {
    private static final Wing WING = new Wing(
            List.of(new Panel(0.31, 0.31, 0.7, 0, 0), new Panel(0.31, 0.19, 0.702, 0.045, Math.toRadians(4))), 0.43);
    private static final Tail TAIL = new Tail(0.096, 0.76, 1.48, 0.9, -0.02);

    /** MG14: two equal surfaces two chords apart, no downwash: midway between their quarter chords. */
    @Test
    void twoEqualSurfacesAreNeutralMidwayBetweenThem() {
        double ratio = PitchStability.tailLiftRatio(1, 1, 1, 0);
        assertThat(0.25 + PitchStability.shiftM(ratio, 2, 0)).isCloseTo(1.25, within(1e-12));
    }

    /** MG15: the same with downwash, aspect ratio 10; three decimals. */
    @Test
    void twoEqualSurfacesWithDownwash() {
        Wing wing = new Wing(List.of(new Panel(0.1, 0.1, 0.5, 0, 0)), 0);
        NeutralPoint point = NeutralPoint.of(wing, new Tail(0.1, 1, 0.225, 1, 0), Optional.empty())
                .orElseThrow();
        assertThat(point.downwashGradient()).isCloseTo(0.31460, within(5e-6));
        assertThat(1000 * point.armM()).isCloseTo(106.334, within(5e-4));
    }

    /** MG20: our own working of a whole aircraft, to its digits. */
    @Test
    void aWholeAircraftIsReproduced() {
        NeutralPoint point = NeutralPoint.of(WING, TAIL, Optional.empty()).orElseThrow();
        Planform planform = Planform.of(WING);
        double slopes = point.tailLiftSlopePerRad() / point.wingLiftSlopePerRad();
        assertThat(point.tailVolumeRatio()).isCloseTo(0.41592, within(5e-6));
        assertThat(0.9 * slopes * (1 - point.downwashGradient())).isCloseTo(0.54613, within(5e-6));
        assertThat(point.tailLiftRatio()).isCloseTo(0.06686, within(5e-6));
        assertThat(planform.macFraction(point.armM())).isCloseTo(0.44291, within(5e-6));
        assertThat(1000 * point.armM()).isCloseTo(565.628, within(5e-4));
    }

    /** The tolerance of the same: 2.20, 1.46, 0.99 and 1.5 % of the chord, together 3.2 % or 9 mm. */
    @Test
    void theToleranceIsTheRootSumOfSquares() {
        NeutralPoint point = NeutralPoint.of(WING, TAIL, Optional.empty()).orElseThrow();
        double chordM = Planform.of(WING).meanAerodynamicChordM();
        assertThat(100 * point.toleranceM() / chordM).isCloseTo(3.2, within(0.05));
        assertThat(1000 * point.toleranceM()).isCloseTo(9, within(0.5));
        NeutralPoint tailless =
                NeutralPoint.of(WING, new Tailless(-0.02), Optional.empty()).orElseThrow();
        assertThat(tailless.toleranceM()).isCloseTo(0.015 * chordM, within(1e-12));
    }

    /** MG21: what the projection overstates a V-tail by. */
    @ParameterizedTest
    @CsvSource({"30, 0.86603", "35, 0.81915", "40, 0.76604", "45, 0.70711"})
    void aVTailActsWithLessThanItsProjection(double dihedralDeg, double factor) {
        double rad = Math.toRadians(dihedralDeg);
        assertThat(PitchStability.areaInPitchM2(0.12, rad) / (0.12 * Math.cos(rad)))
                .isCloseTo(factor, within(5e-6));
        Tail flat = new Tail(0.12, 0.9, 1.48, 0.9, 0);
        Tail vee = new Tail(0.12, 0.9, 1.48, OptionalDouble.empty(), OptionalDouble.of(rad), 0.9, 0);
        double flatRatio =
                NeutralPoint.of(WING, flat, Optional.empty()).orElseThrow().tailLiftRatio();
        double veeRatio =
                NeutralPoint.of(WING, vee, Optional.empty()).orElseThrow().tailLiftRatio();
        assertThat(veeRatio / flatRatio).isCloseTo(Math.cos(rad) * Math.cos(rad), within(1e-12));
    }

    /** A tail above the wing meets less downwash and holds more, but only where both heights are known. */
    @Test
    void aTailAboveTheWingHoldsMore() {
        Tail high = new Tail(0.096, 0.76, 1.48, OptionalDouble.of(0.45), OptionalDouble.empty(), 0.9, -0.02);
        double level =
                NeutralPoint.of(WING, TAIL, Optional.empty()).orElseThrow().armM();
        assertThat(NeutralPoint.of(WING, high, Optional.empty()).orElseThrow().armM())
                .isEqualTo(level);
        Wing placed = new Wing(WING.panels(), WING.rootLeadingEdgeArmM(), OptionalDouble.of(0.05));
        NeutralPoint risen = NeutralPoint.of(placed, high, Optional.empty()).orElseThrow();
        assertThat(risen.armM()).isGreaterThan(level);
        double share = 0.4 / Planform.of(placed).spanM();
        double flat =
                NeutralPoint.of(WING, TAIL, Optional.empty()).orElseThrow().downwashGradient();
        assertThat(risen.downwashGradient()).isCloseTo(flat * Math.pow(1 - share, 1.5), within(1e-12));
    }

    /** Our own working with the table of NACA Report 711 (from memory): 35 % of the length is 0.4155. */
    @Test
    void theFuselageTakesTheNeutralPointForward() {
        assertThat(Fuselage.momentFactor(0.35)).isCloseTo(0.4155, within(5e-5));
        assertThat(Fuselage.momentFactor(-1)).isEqualTo(0.115);
        assertThat(Fuselage.momentFactor(0.1)).isCloseTo(0.115, within(1e-12));
        assertThat(Fuselage.momentFactor(0.7)).isCloseTo(1.146, within(1e-12));
        assertThat(Fuselage.momentFactor(2)).isEqualTo(1.146);
        Fuselage body = new Fuselage(1.2, 0.15, 0);
        double shiftM = body.forwardShiftM(0.35 * 1.2, 0.7, 4.9);
        assertThat(100 * shiftM / 0.28).isCloseTo(1.17, within(5e-3));
        double wideM = new Fuselage(1.3, 0.25, 0).forwardShiftM(0.35 * 1.3, 0.7, 4.9);
        assertThat(100 * wideM / 0.28).isCloseTo(3.52, within(5e-3));
    }
}
