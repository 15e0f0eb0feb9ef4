package trestle.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Notes of a landing held against a straight rest voltage, 29.4 V full to 21.0 V empty, seven cells, 14.7 Ah. */
class LandingByHandTest {
    private static final double AH = 3600;
    private static final RestCurve CURVE =
            new RestCurve(List.of(new RestPoint(0, 29.4), new RestPoint(14.7 * AH, 21.0)), 0, 7);

    private static Landing landing(double chargeAh, double restV) {
        OptionalDouble none = OptionalDouble.empty();
        return new Landing(3660, OptionalDouble.of(chargeAh * AH), none, none, none, OptionalDouble.of(restV), none);
    }

    /** 23.8 V is two thirds used, 9.8 Ah; 5.6 Ah would rest at 26.2 V. */
    @Test
    void readingsThatCannotAllBeTrueAreEachGivenTheirFactor() {
        Reconciliation found = landing(5.6, 23.8).reconciled(CURVE).orElseThrow();
        assertThat(found.apart()).isTrue();
        assertThat(found.chargeShownC()).isCloseTo(9.8 * AH, within(1e-6 * AH));
        assertThat(found.chargeFactor()).isCloseTo(1.75, within(1e-9));
        assertThat(found.capacityFactor()).isCloseTo(1 / 1.75, within(1e-9));
        assertThat(found.voltageFactor()).isCloseTo(26.2 / 23.8, within(1e-9));
    }

    @Test
    void readingsThatFitAreNotAccused() {
        assertThat(landing(9.8, 23.8).reconciled(CURVE).orElseThrow().apart()).isFalse();
    }

    @Test
    void aChargeBetweenTwoRestVoltagesIsACapacity() {
        CapacityEstimate capacity = CapacityEstimate.of(CURVE, OptionalDouble.of(28.0), 23.8, 6 * AH)
                .orElseThrow();
        assertThat(capacity.capacityC()).isCloseTo(12 * AH, within(1e-6 * AH));
        assertThat(capacity.deviationC()).isBetween(0.05 * 12 * AH, 0.1 * 12 * AH);
    }

    @Test
    void hardlyAnyChargeSaysNothingOfTheCapacity() {
        assertThat(CapacityEstimate.of(CURVE, OptionalDouble.empty(), 29.0, 0.7 * AH))
                .isEmpty();
    }

    /** 14 + 0.0218·1.2·15³ + 18.1·6.6²/(1.2·15) = 146.1 W; the curve goes through it, and is unsure away from it. */
    @Test
    void oneMeanPowerGivesACurveThroughItThatIsLessSureElsewhere() {
        PowerFit fit = OneSpeedFit.of(new PowerAtSpeed(15, 146.1, 5), 6.6, 2.8, 1.2, 14)
                .orElseThrow();
        assertThat(fit.powerW(15, 1.2)).isCloseTo(146.1, within(1e-9));
        assertThat(fit.deviationW(15, 1.2)).isCloseTo(5, within(1e-9));
        assertThat(fit.deviationW(12, 1.2)).isGreaterThan(5);
        assertThat(fit.deviationW(20, 1.2)).isGreaterThan(5);
    }

    @Test
    void aPowerThatTheWingAloneWouldTakeIsNoCurve() {
        assertThat(OneSpeedFit.of(new PowerAtSpeed(15, 40, 5), 6.6, 2.8, 1.2, 14))
                .isEmpty();
    }
}
