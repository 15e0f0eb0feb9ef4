package trestle.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turns in a wind against small steps, and directions against their opposites. */
class TurnInWindTest {
    private static final double AIRSPEED = 16;

    /** A turn walked in a hundred thousand steps by the wind triangle. */
    @ParameterizedTest
    @CsvSource({"0, 20, 30", "5, 20, 30", "5, 60, 30", "5, 90, 30", "10, 20, 30", "15, 20, 30"})
    void aTurnTakesTheTimeOfItsSteps(double windMPerS, double besideM, double radiusM) {
        Wind wind = new Wind(windMPerS, 0.7);
        for (double side : new double[] {-1, 1}) {
            double away = besideM < 2 * radiusM ? Math.acos((radiusM + besideM / 2) / (2 * radiusM)) : 0;
            double[] bends = {-side * away, side * (Math.PI + 2 * away), -side * away};
            double track = 0.4;
            double time = Math.max(0, besideM - 2 * radiusM) / wind.groundMPerS(AIRSPEED, track + side * Math.PI / 2);
            for (double bend : bends) {
                int steps = 100_000;
                for (int i = 0; i < steps; i++) {
                    double here = track + bend * (i + 0.5) / steps;
                    time += radiusM * Math.abs(bend) / steps / wind.groundMPerS(AIRSPEED, here);
                }
                track += bend;
            }
            assertThat(new Flying(AIRSPEED, wind, 0.5).turnS(0.4, side, besideM, radiusM))
                    .isCloseTo(time, withPercentage(0.1));
        }
    }

    @Test
    void stillAirTakesTheWayOverTheAirspeed() {
        assertThat(new Flying(AIRSPEED, Wind.STILL, 0.5).turnS(1, 1, 20, 30))
                .isCloseTo(Turns.wayM(20, 30) / AIRSPEED, withPercentage(1e-9));
    }

    /** Asked without a direction, the answer is not slower than its own opposite. */
    @Test
    void theBestIsNotSlowerThanItsOpposite() {
        for (double areaM2 = 2e4; areaM2 < 6e5; areaM2 *= 1.17) {
            SurveyTask task = new SurveyTask(
                    new Camera(0.0235, 0.0156, 6000, 4000, 0.016, OptionalDouble.empty(), OptionalDouble.empty()),
                    100,
                    0.75,
                    0.65,
                    1,
                    Block.of(List.of(List.of(
                            new Position(8.2, 53.6),
                            new Position(8.2 + areaM2 / 3e7, 53.601),
                            new Position(8.2 + areaM2 / 4e7, 53.6 + areaM2 / 6e7),
                            new Position(8.2, 53.6)))),
                    OptionalDouble.empty(),
                    AIRSPEED,
                    new Wind(5, 1),
                    0.5,
                    false,
                    Optional.empty());
            Pass best = Direction.best(task);
            assertThat(best.timeS())
                    .isLessThanOrEqualTo(
                            Pass.of(task, best.directionRad() + Math.PI).timeS() + 1e-9);
        }
    }
}
