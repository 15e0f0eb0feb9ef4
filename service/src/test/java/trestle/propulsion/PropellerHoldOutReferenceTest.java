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

    @Test
    void staticThrustIsWithinTwelvePercentOnAverage() {
        assertThat(meanAbsolute(HoldOut::staticThrustErrorPercent)).isLessThan(12);
    }

    @Test
    void staticPowerIsWithinFifteenPercentOnAverage() {
        assertThat(meanAbsolute(HoldOut::staticPowerErrorPercent)).isLessThan(15);
    }

    @Test
    void peakEfficiencyIsWithinSixHundredthsOnAverage() {
        assertThat(meanAbsolute(HoldOut::peakEfficiencyError)).isLessThan(0.06);
    }

    /**
     * What is left is the spread between products of one printed size; half the worst is typical.
     */
    @Test
    void thrustAndPowerInFlightAreWithinFifteenPercentOnAverage() {
        assertThat(meanAbsolute(HoldOut::meanAbsoluteThrustErrorInFlightPercent))
                .isLessThan(15);
        assertThat(meanAbsolute(HoldOut::meanAbsolutePowerErrorInFlightPercent)).isLessThan(15);
    }

    /**
     * The worst single propellers stand for what diameter and pitch do not tell: the 14x12 has a
     * blade a third narrower than the mean one (static thrust +21 %), the 11x6 a true pitch a fifth
     * above the printed one (−13 %, 26 % in flight); of the 14x8 (static power −18 %) no geometry
     * is published. Efficiency holds even there.
     */
    @ParameterizedTest
    @MethodSource("holdOuts")
    void noPropellerIsFurtherOffThanTheWorstOnRecord(HoldOut propeller) {
        assertThat(propeller.staticThrustErrorPercent()).isCloseTo(0, within(21.0));
        assertThat(propeller.staticPowerErrorPercent()).isCloseTo(0, within(19.0));
        assertThat(propeller.meanAbsoluteThrustErrorInFlightPercent()).isLessThan(28);
        assertThat(propeller.meanAbsolutePowerErrorInFlightPercent()).isLessThan(26);
        assertThat(propeller.meanAbsoluteEfficiencyError()).isLessThan(0.04);
        assertThat(propeller.peakEfficiencyError()).isCloseTo(0, within(0.04));
    }

    @Test
    void theSetIsWhole() {
        assertThat(holdOuts()).hasSize(19);
        assertThat(holdOuts()).allSatisfy(p -> assertThat(p.advancing()).hasSizeGreaterThan(15));
    }

    private static double meanAbsolute(ToDoubleFunction<HoldOut> error) {
        return holdOuts().stream()
                .mapToDouble(p -> Math.abs(error.applyAsDouble(p)))
                .average()
                .orElseThrow();
    }
}
