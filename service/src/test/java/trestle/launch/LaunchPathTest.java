package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;

/** The way of a launch agrees with what the launch says of itself. */
class LaunchPathTest {
    private static LaunchStallTask throwAt(double speedMPerS, double thrustN) {
        Airframe airframe = new Airframe(5.9, 0.784, 2.8, 1.25);
        return new LaunchStallTask(
                airframe,
                DragPolar.of(0.031, 0.8, airframe.aspectRatio()),
                new LinearThrust(thrustN, 26),
                StandardAtmosphere.at(0),
                0,
                new Launch.Hand(speedMPerS, 0, 1.8),
                0.5,
                Turn.ofBankRad(0.5),
                OptionalDouble.empty());
    }

    @Test
    void itsLowestPointIsTheHeightLost() {
        LaunchStallTask task = throwAt(10, 30);
        LaunchStallResult result = LaunchStall.of(task);
        List<LaunchPath.Moment> path = LaunchPath.of(task, result);
        double lowest =
                path.stream().mapToDouble(LaunchPath.Moment::heightM).min().orElseThrow();
        assertThat(1.8 - lowest).isCloseTo(result.launch().heightLostM(), within(0.01));
    }

    @Test
    void itEndsAtTheSafeSpeed() {
        LaunchStallTask task = throwAt(11, 40);
        LaunchStallResult result = LaunchStall.of(task);
        List<LaunchPath.Moment> path = LaunchPath.of(task, result);
        LaunchPath.Moment last = path.get(path.size() - 1);
        assertThat(last.timeS()).isCloseTo(result.launch().timeToSafeSpeedS().orElseThrow(), within(1e-6));
        assertThat(last.airspeedMPerS()).isGreaterThanOrEqualTo(result.safeClimbSpeedMPerS() - 1e-3);
    }

    @Test
    void withoutThrustItEndsInTheGround() {
        LaunchStallTask task = throwAt(7, 0);
        List<LaunchPath.Moment> path = LaunchPath.of(task, LaunchStall.of(task));
        assertThat(path.get(path.size() - 1).heightM()).isCloseTo(0, within(1e-3));
    }
}
