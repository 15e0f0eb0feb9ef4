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
    private static LaunchAndClimbTask throwAt(double speedMPerS, double thrustN) {
        Airframe airframe = new Airframe(5.9, 0.784, 2.8, 1.25);
        return new LaunchAndClimbTask(
                airframe,
                DragPolar.of(0.031, 0.8, airframe.aspectRatio()),
                new LinearThrust(thrustN, 26),
                StandardAtmosphere.at(0),
                LaunchWind.STILL,
                new Launch.Hand(speedMPerS, 0, 1.8),
                LaunchLimits.NONE,
                0.5,
                Turn.ofBankRad(0.5),
                OptionalDouble.empty());
    }

    @Test
    void itsLowestPointIsTheHeightLost() {
        LaunchAndClimbTask task = throwAt(10, 30);
        LaunchAndClimbResult result = LaunchAndClimb.of(task);
        List<Moment> path = result.launch().path();
        double lowest = path.stream().mapToDouble(Moment::heightM).min().orElseThrow();
        assertThat(1.8 - lowest).isCloseTo(result.launch().heightLostM(), within(0.01));
    }

    @Test
    void itEndsAtTheClimbSpeed() {
        LaunchAndClimbTask task = throwAt(11, 40);
        LaunchAndClimbResult result = LaunchAndClimb.of(task);
        List<Moment> path = result.launch().path();
        Moment last = path.get(path.size() - 1);
        assertThat(last.timeS()).isCloseTo(result.launch().timeToClimbSpeedS().orElseThrow(), within(1e-6));
        assertThat(last.airspeedMPerS()).isGreaterThanOrEqualTo(result.climbSpeedMPerS() - 1e-3);
    }

    @Test
    void withoutThrustItEndsInTheGround() {
        LaunchAndClimbTask task = throwAt(7, 0);
        List<Moment> path = LaunchAndClimb.of(task).launch().path();
        assertThat(path.get(path.size() - 1).heightM()).isCloseTo(0, within(1e-3));
    }
}
