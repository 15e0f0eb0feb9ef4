package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Capacitors plugged onto a supply: the closed form of a loop of R, L and C, worked by hand and by small steps. */
class InrushByHandTest {
    private static final double FARAD = 2200e-6;
    private static final double VOLT = 25.2;
    private static final double HENRY = 0.6e-6;

    @ParameterizedTest
    @CsvSource({"0.060, 1.81659, 360.78", "0.020, 0.60553, 757.54"})
    void theLoopHasThisPeak(double ohm, double damping, double peakA) {
        Inrush inrush = Inrush.of(FARAD, VOLT, ohm, HENRY);

        assertThat(inrush.energyJ()).isCloseTo(0.698544, within(1e-6));
        assertThat(inrush.damping().orElseThrow()).isCloseTo(damping, within(5e-6));
        assertThat(inrush.peakCurrentA().orElseThrow()).isCloseTo(peakA, within(5e-3));
    }

    /** The same loop, followed in steps of 2 ns. */
    @ParameterizedTest
    @CsvSource({"0.003", "0.020", "0.03302891", "0.034", "0.060", "0.5"})
    void smallStepsFindTheSamePeak(double ohm) {
        double stepS = 2e-9;
        double currentA = 0;
        double chargedV = 0;
        double peakA = 0;
        for (int step = 0; step < 200_000; step++) {
            currentA += stepS * (VOLT - chargedV - ohm * currentA) / HENRY;
            chargedV += stepS * currentA / FARAD;
            peakA = Math.max(peakA, currentA);
        }
        assertThat(Inrush.of(FARAD, VOLT, ohm, HENRY).peakCurrentA().orElseThrow())
                .isCloseTo(peakA, within(2e-3 * peakA));
    }

    @Test
    void tenOhmChargeItInATenthOfASecond() {
        Plugging plugging = new Plugging(FARAD, VOLT, 10, true, OptionalDouble.empty());

        assertThat(plugging.waitS()).isCloseTo(0.110, within(1e-12));
        assertThat(plugging.peakPowerW()).isCloseTo(63.504, within(1e-9));
        assertThat(plugging.leftVoltageV()).isCloseTo(0.1698, within(5e-5));
        assertThat(new Precharge(OptionalDouble.empty(), OptionalDouble.empty()).resistanceAt(VOLT))
                .isEqualTo(10);
    }
}
