package trestle.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Voltages and times worked out with a separate program of the same cell's equations, cells kept at 25 °C: 6S4P of 4.9 Ah
 * from full at 150 W, then 700 W down to 18.6 V. Not measured.
 */
final class GoAroundCrossCheckTest {
    private static final double CELLS = 6;

    @ParameterizedTest
    @CsvSource({"0.30, 3.239, 98", "0.20, 3.114, 15"})
    void fullPowerOnTheLastOfAPack(double charge, double after10sV, double cutoffS) {
        GoAround run = GoAround.of(GoAroundTasks.isothermal(charge));
        assertThat(run.voltageAfter10sV().orElseThrow() / CELLS).isCloseTo(after10sV, within(0.0005));
        assertThat(run.timeToCutoffS().orElseThrow()).isCloseTo(cutoffS, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"0.15", "0.10"})
    void nothingIsLeftForItAtLessCharge(double charge) {
        assertThat(GoAround.of(GoAroundTasks.isothermal(charge)).timeToCutoffS())
                .hasValue(0);
    }
}
