package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lift slope and neutral point against theory and against another rule; what is published of it is from memory. */
class StabilityClosedFormTest {

    /** Thin-section theory, 2π, for endless span; slender-wing theory, π A / 2, for no span. */
    @Test
    void liftSlopeMeetsBothEndsOfTheory() {
        assertThat(LiftSlope.perRad(1e6, 0, 1)).isCloseTo(2 * Math.PI, withPercentage(0.001));
        assertThat(LiftSlope.perRad(1e-3, 0, 1)).isCloseTo(Math.PI / 2 * 1e-3, withPercentage(0.1));
    }

    /**
     * The circular wing, A = 4/π, has an exact lifting-surface solution, 1.790 per rad (from
     * memory). Helmbold's equation is an interpolation; its residual here is 2.25 %.
     */
    @Test
    void liftSlopeOfTheCircularWingIsMetToTwoAndAHalfPercent() {
        double slope = LiftSlope.perRad(4 / Math.PI, 0, 1);
        assertThat(slope).isCloseTo(1.790, withPercentage(2.5));
        assertThat(slope).isGreaterThan(1.790);
    }

    /** Elliptical loading by lifting-line theory with its own slope 2π/(1 + 2/A): 2/(A + 2) × 2. */
    @Test
    void downwashMeetsLiftingLineTheory() {
        double aspectRatio = 8;
        double slope = 2 * Math.PI / (1 + 2 / aspectRatio);
        assertThat(LiftSlope.downwashGradient(slope, aspectRatio, 0)).isCloseTo(4 / (aspectRatio + 2), within(1e-12));
    }

    /**
     * "Basic Aircraft Design Rules", MIT Unified Engineering notes (from memory): xn/c = 1/4 + (1 +
     * 2/A)/(1 + 2/Ah) (1 − 4/(A + 2)) Vh, with lifting-line slopes, ideal sections, a tail in the free
     * stream and its lever counted from the CG, here from the neutral point itself. Helmbold's slopes and a section slope
     * of 95 % move it by at most 0.6 % of the chord, at A = 6.
     */
    @ParameterizedTest
    @CsvSource({"6, 4, 0.4", "8, 4, 0.5", "10, 5, 0.5", "12, 5, 0.6", "16, 6, 0.5"})
    void neutralPointIsNearAnotherRule(double aspectRatio, double tailAspectRatio, double tailVolume) {
        double chordM = 0.3;
        double spanM = aspectRatio * chordM;
        double areaM2 = chordM * spanM;
        double leverM = 3 * chordM;
        double tailAreaM2 = tailVolume * areaM2 * chordM / leverM;
        Wing shape = new Wing(List.of(new Panel(chordM, chordM, spanM / 2, 0, 0)), 0);
        Planform wing = Planform.of(shape);
        double tailSpanM = Math.sqrt(tailAspectRatio * tailAreaM2);
        Tail tail = new Tail(tailAreaM2, tailSpanM, wing.quarterMacArmM() + leverM, 1, 0);
        NeutralPoint point = NeutralPoint.of(shape, tail, Optional.empty()).orElseThrow();
        double volumeFromPoint = tailVolume * (tail.quarterChordArmM() - point.armM()) / leverM;
        double rule = 0.25
                + (1 + 2 / aspectRatio) / (1 + 2 / tailAspectRatio) * (1 - 4 / (aspectRatio + 2)) * volumeFromPoint;
        assertThat(point.tailVolumeRatio()).isCloseTo(tailVolume, within(1e-12));
        assertThat(wing.macFraction(point.armM())).isCloseTo(rule, within(0.008));
    }
}
