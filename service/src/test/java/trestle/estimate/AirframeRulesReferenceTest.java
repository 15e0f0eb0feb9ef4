package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Aircraft whose zero-lift drag or span efficiency was published, and tables worked from the sources' equations. All
 * second hand: read where others quote them, not in the books and papers themselves.
 */
class AirframeRulesReferenceTest {

    /** Worked from the class's own numbers: a wing of 0.784 m², 2.8 m span, at 15 m/s at sea level. */
    @Test
    void aClassAndAWettedAreaMakeADragCoefficient() {
        double reynolds = 1.225 * 15 * (0.784 / 2.8) / 1.81e-5;
        assertThat(reynolds).isCloseTo(284_254, within(1.0));
        assertThat(AirframeKind.zeroLiftDrag(0.0105, reynolds, 2.993)).isCloseTo(0.03185, within(0.000005));
    }

    /**
     * R. Beard, T. McLain, Small Unmanned Aircraft, 2012: 13.5 kg twin-boom pusher, C_Dp 0.0437 (an older set has 0.030);
     * 1.56 kg foam wing, C_D0 0.0163 and C_Dp 0.0254 in two sets. K. Gryte et al., ICUAS 2018, wind tunnel: 0.0197.
     */
    @ParameterizedTest
    @CsvSource({
        "PAYLOAD_PUSHER, 320000, 0.0437",
        "FLYING_WING, 220000, 0.0254",
        "FLYING_WING, 430000, 0.0197",
    })
    void aPublishedAircraftLiesInTheBandOfItsClass(AirframeKind kind, double reynolds, double published) {
        Spread spread = kind.zeroLiftDrag(reynolds);
        assertThat(published).isBetween(spread.low(), spread.high());
    }

    /** The lower of two published sets of one foam wing lies below the 10 % point: a class speaks of its kind only. */
    @Test
    void theLowerSetOfTheFoamWingIsBelowItsBand() {
        Spread spread = AirframeKind.FLYING_WING.zeroLiftDrag(220_000);
        assertThat(0.0163).isLessThan(spread.low());
        assertThat(0.0163).isGreaterThan(spread.at(-2.6));
    }

    @Test
    void notKnowingTheClassIsWiderThanAnyClass() {
        Spread unknown = AirframeKind.UNKNOWN.zeroLiftDrag(3e5);
        for (AirframeKind kind : AirframeKind.values()) {
            Spread spread = kind.zeroLiftDrag(3e5);
            assertThat(unknown.high() / unknown.low()).isGreaterThanOrEqualTo(spread.high() / spread.low());
        }
    }

    /** Worked from M. Niță, D. Scholz, DLRK 2012, equations 36 and 37. */
    @ParameterizedTest
    @CsvSource({
        "8, 1.0, 0.08, 0.9407, 0.9872, 0.746, 0.806, 0.868",
        "10, 0.6, 0.06, 0.9741, 0.9928, 0.733, 0.808, 0.886",
        "12, 0.5, 0.05, 0.9769, 0.9950, 0.702, 0.785, 0.876",
        "15, 0.6, 0.04, 0.9616, 0.9968, 0.650, 0.741, 0.844",
        "20, 0.5, 0.03, 0.9621, 0.9982, 0.588, 0.690, 0.813",
    })
    void spanEfficiencyOfAWing(
            double aspectRatio,
            double taper,
            double fuselage,
            double theoretical,
            double body,
            double low,
            double median,
            double high) {
        double ofTaper = SpanEfficiency.ofTaper(aspectRatio, taper, 0);
        double ofFuselage = SpanEfficiency.ofFuselage(fuselage);
        assertThat(ofTaper).isCloseTo(theoretical, within(0.00005));
        assertThat(ofFuselage).isCloseTo(body, within(0.00005));
        assertThat(SpanEfficiency.oswald(ofTaper * ofFuselage, aspectRatio, 0.0105))
                .isCloseTo(low, within(0.0005));
        assertThat(SpanEfficiency.oswald(ofTaper * ofFuselage, aspectRatio, 0.0065))
                .isCloseTo(median, within(0.0005));
        assertThat(SpanEfficiency.oswald(ofTaper * ofFuselage, aspectRatio, 0.003))
                .isCloseTo(high, within(0.0005));
    }

    @Test
    void lowAndHighOfSpanEfficiencyAreInOrder() {
        Spread spread = SpanEfficiency.ofAspectRatio(10);
        assertThat(spread.low()).isCloseTo(0.733, within(0.0005));
        assertThat(spread.median()).isCloseTo(0.808, within(0.0005));
        assertThat(spread.high()).isCloseTo(0.886, within(0.0005));
    }
}
