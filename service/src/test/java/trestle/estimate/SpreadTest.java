package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trestle.numeric.ImpossibleValue;

class SpreadTest {
    @Test
    void aLogNormalHasItsMedianAndItsPercentiles() {
        Spread spread = Spread.logNormal(2, 0.35);
        assertThat(spread.median()).isEqualTo(2);
        assertThat(spread.high() / spread.median()).isCloseTo(Math.exp(0.35 * 1.2815515655446004), within(1e-12));
        assertThat(spread.low() * spread.high()).isCloseTo(4, within(1e-12));
    }

    @Test
    void unlikeSidesMeetAtTheMedian() {
        Spread spread = Spread.between(0.3, 0.5, 1.0);
        assertThat(spread.low()).isCloseTo(0.3, within(1e-12));
        assertThat(spread.median()).isEqualTo(0.5);
        assertThat(spread.high()).isCloseTo(1.0, within(1e-12));
        assertThat(spread.at(-1e-9)).isCloseTo(0.5, within(1e-8));
    }

    @Test
    void equalSidesAreALogNormal() {
        Spread sides = Spread.between(1 / 1.5, 1, 1.5);
        Spread plain = Spread.logNormal(1, Math.log(1.5) / Spread.Z90);
        for (double z = -2.6; z <= 2.6; z += 0.4) {
            assertThat(sides.at(z)).isCloseTo(plain.at(z), within(1e-12));
        }
    }

    @Test
    void nothingIsDrawnFurtherOutThanTheClip() {
        assertThat(Spread.normal(-2, 1.2).at(40)).isEqualTo(-2 + 1.2 * Spread.FURTHEST);
        assertThat(Spread.logNormal(1, 0.5).at(-40)).isEqualTo(Math.exp(-0.5 * Spread.FURTHEST));
    }

    @Test
    void percentilesOutOfOrderAreRefused() {
        assertThatThrownBy(() -> Spread.between(2, 1, 3)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> Spread.between(0, 1, 3)).isInstanceOf(ImpossibleValue.class);
    }
}
