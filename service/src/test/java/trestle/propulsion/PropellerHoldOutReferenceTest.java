package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The blade-element model against wind-tunnel measurements of propellers that its constants were
 * never fitted to. J. B. Brandt and others, UIUC Propeller Data Site, volumes 1 and 3; see
 * reference/uiuc-propellers/README.md.
 */
class PropellerHoldOutReferenceTest {
    static List<HoldOut> holdOuts() {
        return HoldOut.all();
    }

    /** Reached: 6.9 and 7.5 %. */
    @Test
    void staticThrustAndPowerAreWithinSevenAndAHalfPercentOnAverage() {
        assertThat(meanAbsolute(HoldOut::staticThrustErrorPercent)).isLessThan(6.95);
        assertThat(meanAbsolute(HoldOut::staticPowerErrorPercent)).isLessThan(7.55);
    }

    /** Reached: 0.018 both. */
    @Test
    void efficiencyIsWithinTwoHundredthsOnAverage() {
        assertThat(meanAbsolute(HoldOut::peakEfficiencyError)).isLessThan(0.0185);
        assertThat(meanAbsolute(HoldOut::meanAbsoluteEfficiencyError)).isLessThan(0.0185);
    }

    /**
     * Reached: 11.7 and 11.5 %. What is left is the spread between products of one printed size; half
     * the worst is typical.
     */
    @Test
    void thrustAndPowerInFlightAreWithinTwelvePercentOnAverage() {
        assertThat(meanAbsolute(HoldOut::meanAbsoluteThrustErrorInFlightPercent))
                .isLessThan(11.7);
        assertThat(meanAbsolute(HoldOut::meanAbsolutePowerErrorInFlightPercent)).isLessThan(11.55);
    }

    /**
     * The worst single propellers stand for what diameter and pitch do not tell: p04 has a blade a
     * third narrower than the mean one (static thrust +21 %), p06 a true pitch a fifth above the
     * printed one (−13 %, 26 % in flight); of p16 (static power −18 %) no geometry is published.
     * Efficiency holds even there.
     */
    @ParameterizedTest
    @MethodSource("holdOuts")
    void noPropellerIsFurtherOffThanTheWorstOnRecord(HoldOut propeller) {
        assertThat(propeller.staticThrustErrorPercent()).isCloseTo(0, within(20.7));
        assertThat(propeller.staticPowerErrorPercent()).isCloseTo(0, within(17.9));
        assertThat(propeller.meanAbsoluteThrustErrorInFlightPercent()).isLessThan(27.4);
        assertThat(propeller.meanAbsolutePowerErrorInFlightPercent()).isLessThan(25.6);
        assertThat(propeller.meanAbsoluteEfficiencyError()).isLessThan(0.037);
        assertThat(propeller.peakEfficiencyError()).isCloseTo(0, within(0.038));
    }

    @Test
    void theSetIsWhole() {
        assertThat(holdOuts()).hasSize(19);
        assertThat(holdOuts()).allSatisfy(p -> {
            assertThat(p.atRest()).hasSize(3);
            assertThat(p.advancing()).hasSize(8);
        });
    }

    private static double meanAbsolute(ToDoubleFunction<HoldOut> error) {
        return holdOuts().stream()
                .mapToDouble(p -> Math.abs(error.applyAsDouble(p)))
                .average()
                .orElseThrow();
    }
}
