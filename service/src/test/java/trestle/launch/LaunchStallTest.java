package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.flight.Airframe;
import trestle.numeric.ImpossibleValue;

class LaunchStallTest {
    private static final LaunchSetting THROWN = LaunchSetting.thrown();

    private static List<String> codes(LaunchStallResult result) {
        return result.judgement().findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(LaunchStallResult result, String code) {
        return result.judgement().findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: Vs = sqrt(2 m g / (ρ S C_L)), n = 1/cos 45°, R = V² / g. */
    @Test
    void smallestWorkedExample() {
        LaunchStallResult result = THROWN.result();
        double stall = Math.sqrt(2 * 5 * GRAVITY_M_PER_S2 / (1.225 * 0.6 * 1.3));
        assertThat(result.stallSpeedMPerS()).isCloseTo(stall, within(1e-4));
        assertThat(result.stallSpeedTurningMPerS()).isCloseTo(stall * Math.pow(2, 0.25), within(1e-4));
        assertThat(result.safeClimbSpeedMPerS()).isCloseTo(1.3 * stall, within(1e-4));
        double turn = 1.3 * stall * Math.pow(2, 0.25);
        assertThat(result.turnRadiusM().orElseThrow()).isCloseTo(turn * turn / GRAVITY_M_PER_S2, within(1e-3));
        assertThat(result.kineticEnergyJ()).isCloseTo(0.5 * 5 * Math.pow(1.3 * stall, 2), within(1e-2));
        assertThat(result.densityAltitudeM()).isCloseTo(0, within(0.01));
    }

    @Test
    void aThrowUnderTheStallSinksAndRecovers() {
        LaunchStallResult result = THROWN.result();
        LaunchFlight launch = result.launch();
        assertThat(launch.outcome()).isEqualTo(LaunchOutcome.SAFE_SPEED);
        assertThat(launch.marginFraction()).isBetween(-0.1, 0.0);
        assertThat(launch.heightLostM()).isBetween(0.05, 0.9);
        assertThat(launch.timeToSafeSpeedS().orElseThrow()).isBetween(0.5, 2.5);
        assertThat(codes(result)).containsExactly("launch-below-stall");
    }

    @Test
    void aWeakThrowOfAHeavyAircraftEndsInTheGround() {
        LaunchStallResult result = THROWN.with(THROWN.airframe().withMassKg(12))
                .with(new Launch.Hand(7, 0, 1.8))
                .result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.GROUND);
        assertThat(result.launch().timeToSafeSpeedS()).isEmpty();
        Finding finding = finding(result, "launch-into-ground");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.message())
                .isEqualTo("Let go at 7.0 m/s, the aircraft sinks into the ground before it reaches"
                        + " the safe climb speed of 20.4 m/s.");
        assertThat(codes(result)).contains("heavy-for-hand");
    }

    @Test
    void aHeadwindMakesTheSameThrowSafe() {
        LaunchStallResult still = THROWN.with(new Launch.Hand(8, 0, 1.8)).result();
        LaunchStallResult windy =
                THROWN.with(new Launch.Hand(8, 0, 1.8)).headwind(5).result();
        assertThat(windy.launch().heightLostM()).isLessThan(still.launch().heightLostM());
        assertThat(windy.launch().marginFraction()).isGreaterThan(0.1);
        assertThat(codes(windy)).isEmpty();
    }

    /** Air from behind would otherwise pass for airspeed, the stronger the safer. */
    @Test
    void aTailwindFasterThanTheThrowIsNoAirspeed() {
        LaunchStallResult result = THROWN.headwind(-40).result();
        assertThat(result.launch().releaseAirspeedMPerS()).isZero();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.GROUND);
        assertThat(finding(result, "launch-downwind").value()).hasValue(40);
    }

    @Test
    void aWindAboveTheFlyingSpeedIsSaid() {
        LaunchStallResult result = THROWN.headwind(20).result();
        assertThat(codes(result)).containsExactly("wind-above-flying-speed");
        assertThat(finding(result, "wind-above-flying-speed").limit().orElseThrow())
                .isCloseTo(result.safeClimbSpeedMPerS(), within(1e-9));
    }

    @Test
    void aFastReleaseIsSafeAtOnce() {
        LaunchFlight launch = THROWN.with(new Launch.Catapult(20, 4, Math.toRadians(10), 1))
                .result()
                .launch();
        assertThat(launch.timeToSafeSpeedS()).hasValue(0);
        assertThat(launch.heightLostM()).isZero();
    }

    @Test
    void thrustBelowDragIsAStop() {
        LaunchStallResult result = THROWN.with(new LinearThrust(3, 28)).result();
        assertThat(finding(result, "thrust-never-reaches-drag").severity()).isEqualTo(Severity.STOP);
        assertThat(result.climb().rateMPerS()).isNegative();
        assertThat(result.launch().outcome()).isNotEqualTo(LaunchOutcome.SAFE_SPEED);
    }

    /** Enough to fly slowly, not enough at the safe climb speed. */
    @Test
    void thrustThatGivesOutBeforeTheSafeSpeedIsAStop() {
        LaunchStallResult result = THROWN.with(new LinearThrust(60, 12.5)).result();
        assertThat(codes(result)).contains("no-climb").doesNotContain("thrust-never-reaches-drag");
    }

    @Test
    void slowInTheAirAfterTenSecondsIsAStop() {
        LaunchStallResult result = THROWN.with(new LinearThrust(60, 12.8))
                .with(new Launch.Hand(10, 0, 30))
                .result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.TOO_SLOW);
        assertThat(codes(result)).contains("safe-speed-not-reached");
    }

    @Test
    void aDollyThatNeverRollsSaysSo() {
        LaunchStallResult result = THROWN.with(new LinearThrust(3, 28))
                .with(new Launch.Dolly(new LiftOff.Airspeed(13), 0.1, 0.3, 1, 0.3))
                .result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.NEVER_RELEASED);
        assertThat(result.launch().groundRunM().orElseThrow()).isZero();
        assertThat(codes(result)).contains("launch-never-leaves");
    }

    @Test
    void aDollyInAStrongWindLeavesWithoutARun() {
        LaunchFlight launch = THROWN.with(new Launch.Dolly(new LiftOff.Airspeed(13), 0.05, 0.3, 1, 0.3))
                .headwind(13)
                .result()
                .launch();
        assertThat(launch.groundRunM()).hasValue(0);
        assertThat(launch.releaseAirspeedMPerS()).isEqualTo(13);
    }

    @Test
    void aLimpBungeeNeverLeavesTheRamp() {
        LaunchStallResult result =
                THROWN.with(new Launch.Bungee(5, 2, 0, 0.85, 0.3, 0.2, 1)).result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.NEVER_RELEASED);
    }

    @Test
    void thinAirStallsFaster() {
        LaunchStallResult high = THROWN.in(StandardAtmosphere.at(2500)).result();
        assertThat(high.stallSpeedMPerS()).isGreaterThan(1.1 * THROWN.result().stallSpeedMPerS());
        assertThat(codes(high)).contains("thin-air");
        assertThat(high.densityAltitudeM()).isCloseTo(2500, within(0.01));
    }

    @Test
    void aTurnBelowItsStallIsAStop() {
        LaunchStallTask task = THROWN.task();
        LaunchStallResult result = LaunchStall.of(new LaunchStallTask(
                task.airframe(),
                task.polar(),
                task.thrust(),
                task.air(),
                0,
                task.launch(),
                0,
                new Turn(3),
                OptionalDouble.of(14)));
        assertThat(finding(result, "stall-in-turn").limit().orElseThrow())
                .isCloseTo(result.stallSpeedMPerS() * Math.sqrt(3), within(1e-9));
    }

    @Test
    void aThrustCurveIsReadByStraightLinesAndRunsOut() {
        ThrustCurve curve =
                new ThrustCurve(List.of(new ThrustPoint(2, 30), new ThrustPoint(10, 20), new ThrustPoint(12, 10)));
        assertThat(curve.thrustN(0)).isEqualTo(30);
        assertThat(curve.thrustN(6)).isCloseTo(25, within(1e-12));
        assertThat(curve.thrustN(13)).isCloseTo(5, within(1e-12));
        assertThat(curve.thrustN(20)).isZero();
        assertThat(codes(THROWN.with(curve).result())).contains("thrust-curve-extrapolated");
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> new Launch.Hand(9, 0, 0)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Turn(0.9)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new ThrustCurve(List.of())).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Airframe(5, 0.6, 2.4, 0)).isInstanceOf(ImpossibleValue.class);
    }
}
