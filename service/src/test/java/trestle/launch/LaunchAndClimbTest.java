package trestle.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.numeric.ImpossibleValue;

class LaunchAndClimbTest {
    private static final LaunchSetting THROWN = LaunchSetting.thrown();

    private static List<String> codes(LaunchAndClimbResult result) {
        return result.judgement().findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(LaunchAndClimbResult result, String code) {
        return result.judgement().findings().stream()
                .filter(f -> f.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: Vs = sqrt(2 m g / (ρ S C_L)), n = 1/cos 45°, R = V² / g. */
    @Test
    void smallestWorkedExample() {
        LaunchAndClimbResult result = THROWN.result();
        double stall = Math.sqrt(2 * 5 * GRAVITY_M_PER_S2 / (1.225 * 0.6 * 1.3));
        assertThat(result.stallSpeedMPerS()).isCloseTo(stall, within(1e-4));
        assertThat(result.stallSpeedTurningMPerS()).isCloseTo(stall * Math.pow(2, 0.25), within(1e-4));
        assertThat(result.climbSpeedMPerS()).isCloseTo(1.3 * stall, within(1e-4));
        double turn = 1.3 * stall * Math.pow(2, 0.25);
        assertThat(result.turnRadiusM().orElseThrow()).isCloseTo(turn * turn / GRAVITY_M_PER_S2, within(1e-3));
        assertThat(result.kineticEnergyJ()).isCloseTo(0.5 * 5 * Math.pow(1.3 * stall, 2), within(1e-2));
        assertThat(result.densityAltitudeM()).isCloseTo(0, within(0.01));
    }

    @Test
    void aThrowUnderTheStallSinksAndRecovers() {
        LaunchAndClimbResult result = THROWN.result();
        LaunchFlight launch = result.launch();
        assertThat(launch.outcome()).isEqualTo(LaunchOutcome.CLIMB_SPEED_REACHED);
        assertThat(launch.marginFraction()).isBetween(-0.1, 0.0);
        assertThat(launch.heightLostM()).isBetween(0.05, 0.9);
        assertThat(launch.timeToClimbSpeedS().orElseThrow()).isBetween(0.5, 2.5);
        assertThat(codes(result)).containsExactly("launch-below-stall");
    }

    @Test
    void aWeakThrowOfAHeavyAircraftEndsInTheGround() {
        LaunchAndClimbResult result = THROWN.with(THROWN.airframe().withMassKg(12))
                .with(new Launch.Hand(7, 0, 1.8))
                .result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.GROUND);
        assertThat(result.launch().timeToClimbSpeedS()).isEmpty();
        Finding finding = finding(result, "launch-into-ground");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.message())
                .isEqualTo(
                        "Released at an airspeed of 7.0 m/s, with a stall speed of 15.7 m/s, the aircraft sinks into the"
                                + " ground before it reaches its climb speed of 20.4 m/s: launch it by bungee or dolly at 17.3 m/s.");
        assertThat(codes(result)).contains("heavy-for-hand");
    }

    @Test
    void aHeadwindMakesTheSameThrowDo() {
        LaunchAndClimbResult still = THROWN.with(new Launch.Hand(8, 0, 1.8)).result();
        LaunchAndClimbResult windy =
                THROWN.with(new Launch.Hand(8, 0, 1.8)).headwind(5).result();
        assertThat(windy.launch().heightLostM()).isLessThan(still.launch().heightLostM());
        assertThat(windy.launch().marginFraction()).isGreaterThan(0.1);
        assertThat(codes(windy)).containsExactly("launch-needs-wind");
    }

    /** Air from behind would otherwise pass for airspeed, the stronger the safer. */
    @Test
    void aTailwindFasterThanTheThrowIsNoAirspeed() {
        LaunchAndClimbResult result = THROWN.headwind(-40).result();
        assertThat(result.launch().releaseAirspeedMPerS()).isZero();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.GROUND);
        assertThat(finding(result, "launch-downwind").value()).hasValue(40);
    }

    @Test
    void aWindAboveTheFlyingSpeedIsSaid() {
        LaunchAndClimbResult result = THROWN.headwind(20).result();
        assertThat(codes(result)).containsExactly("wind-above-flying-speed");
        assertThat(finding(result, "wind-above-flying-speed").limit().orElseThrow())
                .isCloseTo(result.climbSpeedMPerS(), within(1e-9));
    }

    @Test
    void aFastReleaseIsSafeAtOnce() {
        LaunchFlight launch = THROWN.with(new Launch.Catapult(20, 4, Math.toRadians(10), 1))
                .result()
                .launch();
        assertThat(launch.timeToClimbSpeedS()).hasValue(0);
        assertThat(launch.heightLostM()).isZero();
    }

    @Test
    void thrustBelowDragIsAStop() {
        LaunchAndClimbResult result = THROWN.with(new LinearThrust(3, 28)).result();
        assertThat(finding(result, "thrust-never-reaches-drag").severity()).isEqualTo(Severity.STOP);
        assertThat(result.climb().rateMPerS()).isNegative();
        assertThat(result.launch().outcome()).isNotEqualTo(LaunchOutcome.CLIMB_SPEED_REACHED);
    }

    /** Enough to fly slowly, not enough at the safe climb speed. */
    @Test
    void thrustThatGivesOutBeforeTheSafeSpeedIsAStop() {
        LaunchAndClimbResult result = THROWN.with(new LinearThrust(60, 12.5)).result();
        assertThat(codes(result)).contains("no-climb").doesNotContain("thrust-never-reaches-drag");
    }

    @Test
    void slowInTheAirAfterTenSecondsIsAStop() {
        LaunchAndClimbResult result = THROWN.with(new LinearThrust(60, 12.8))
                .with(new Launch.Hand(10, 0, 30))
                .result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.TOO_SLOW);
        assertThat(codes(result)).contains("climb-speed-not-reached");
    }

    @Test
    void aDollyThatNeverRollsSaysSo() {
        LaunchAndClimbResult result = THROWN.with(new LinearThrust(3, 28))
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
        LaunchAndClimbResult result =
                THROWN.with(new Launch.Bungee(5, 2, 0, 0.85, 0.3, 0.2, 1)).result();
        assertThat(result.launch().outcome()).isEqualTo(LaunchOutcome.NEVER_RELEASED);
    }

    @Test
    void thinAirStallsFaster() {
        LaunchAndClimbResult high = THROWN.in(StandardAtmosphere.at(2500)).result();
        assertThat(high.stallSpeedMPerS()).isGreaterThan(1.1 * THROWN.result().stallSpeedMPerS());
        assertThat(codes(high)).contains("thin-air");
        assertThat(high.densityAltitudeM()).isCloseTo(2500, within(0.01));
    }

    @Test
    void aTurnBelowItsStallIsAStop() {
        LaunchAndClimbTask task = THROWN.task();
        LaunchAndClimbResult result = LaunchAndClimb.of(new LaunchAndClimbTask(
                task.airframe(),
                task.polar(),
                task.thrust(),
                task.air(),
                LaunchWind.STILL,
                task.launch(),
                LaunchLimits.NONE,
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
    void aLaunchIsJudgedInStillAirUnlessItHasAWind() {
        LaunchFlight still = THROWN.result().launch();
        assertThat(still.releaseAirspeedInLullMPerS()).isEqualTo(9.5);
        LaunchFlight windy = THROWN.with(new LaunchWind(5, 10, Terrain.OPEN, OptionalDouble.empty(), false))
                .result()
                .launch();
        assertThat(windy.meanWindMPerS()).isCloseTo(5 * 0.7048, within(5e-4));
        assertThat(windy.lullMPerS()).isCloseTo(windy.meanWindMPerS() * (1 - 1 / Math.log(60)), within(1e-9));
        assertThat(windy.releaseAirspeedInLullMPerS()).isCloseTo(9.5 + windy.lullMPerS(), within(1e-9));
        assertThat(windy.releaseAirspeedMPerS()).isCloseTo(9.5 + windy.meanWindMPerS(), within(1e-9));
    }

    /** A throw that works in the flight's wind alone says which wind, and what does without. */
    @Test
    void theWindOfTheFlightIsSaidToBeAssumed() {
        LaunchAndClimbResult leaning = THROWN.with(new Launch.Hand(9, 0, 1.8))
                .with(new LaunchWind(8, 100, Terrain.OPEN, OptionalDouble.empty(), true))
                .result();
        Finding assumed = finding(leaning, "launch-wind-assumed");
        assertThat(assumed.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(assumed.message())
                .isEqualTo("The flight's 8.0 m/s at 100 m is taken as 4.0 m/s at the release height of 1.8 m, 3.1 in a"
                        + " lull, and the launch needs it: measure the wind at that height, or throw at 11.2 m/s.");
        LaunchAndClimbResult able = THROWN.with(new Launch.Hand(11, 0, 1.8))
                .with(new LaunchWind(8, 100, Terrain.OPEN, OptionalDouble.empty(), true))
                .result();
        assertThat(finding(able, "launch-wind-assumed").severity()).isEqualTo(Severity.NOTE);
    }

    @Test
    void whereTheLawDoesNotHoldNoHeadwindIsCredited() {
        LaunchWind amongTrees = new LaunchWind(6, 10, Terrain.VERY_ROUGH, OptionalDouble.empty(), false);
        assertThat(amongTrees.meanMPerS(1.8)).isZero();
        LaunchWind behind = new LaunchWind(-6, 10, Terrain.VERY_ROUGH, OptionalDouble.empty(), false);
        assertThat(behind.lullMPerS(1.8)).isEqualTo(-12);
        assertThat(new LaunchWind(6, 200, Terrain.OPEN, OptionalDouble.empty(), false).meanMPerS(1.8))
                .isZero();
    }

    /** 200 N/m by 20 m and 25 m/s on half a metre passed once without a word. */
    @Test
    void everyKindOfLaunchHasUpperLimits() {
        LaunchAndClimbResult cord =
                THROWN.with(new Launch.Bungee(200, 20, 0, 0.8, 0.2, 0, 0.5)).result();
        assertThat(codes(cord)).contains("launch-acceleration-high", "cord-energy-high", "launch-too-fast");
        assertThat(finding(cord, "launch-acceleration-high").severity()).isEqualTo(Severity.STOP);
        LaunchAndClimbResult rail =
                THROWN.with(new Launch.Catapult(25, 0.5, 0, 1)).result();
        assertThat(finding(rail, "launch-acceleration-high").severity()).isEqualTo(Severity.STOP);
        LaunchAndClimbResult thrown = THROWN.with(new Launch.Hand(12, 0, 1.8)).result();
        assertThat(codes(thrown)).containsExactly("throw-too-fast");
        assertThat(check(thrown, "launch-acceleration").outcome()).isEqualTo(Outcome.ATTENTION);
    }

    @Test
    void aHookIsJudgedWhereItsStrengthIsGiven() {
        LaunchSetting cord = THROWN.with(new Launch.Bungee(14, 9, 0.6, 0.8, 0.2, 0, 0.5));
        Check unknown = check(cord.result(), "hook-force");
        assertThat(unknown.outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(unknown.give()).containsExactly(Subject.of(LaunchPart.MAX_HOOK_FORCE));
        LaunchAndClimbResult weak = cord.with(
                        new LaunchLimits(OptionalDouble.empty(), OptionalDouble.of(100), OptionalDouble.empty()))
                .result();
        assertThat(finding(weak, "hook-force-high").message())
                .isEqualTo(
                        "The hook takes 126 N at the peak of the pull and is good for 100 N: stretch the cord by no more"
                                + " than 7.1 m.");
    }

    @Test
    void aReleaseAboveTheNeverExceedAirspeedIsAStop() {
        LaunchAndClimbResult fast = THROWN.with(new Launch.Catapult(30, 10, 0, 1))
                .with(new LaunchLimits(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(28)))
                .result();
        assertThat(finding(fast, "launch-too-fast").severity()).isEqualTo(Severity.STOP);
    }

    /** What a launch is said to need is what then leaves ten per cent. */
    @Test
    void whatIsNeededDoes() {
        LaunchSetting cord = THROWN.with(new Launch.Bungee(20, 5, 0.6, 0.8, 0.2, 0.1, 0.5));
        Needed needed = cord.result().launch().needed();
        double stretchM = needed.stretchM().orElseThrow();
        LaunchFlight stretched = cord.with(new Launch.Bungee(20, stretchM, 0.6, 0.8, 0.2, 0.1, 0.5))
                .result()
                .launch();
        assertThat(stretched.marginFraction()).isCloseTo(0.1, within(1e-5));
        LaunchWind wind =
                new LaunchWind(needed.windMPerS().orElseThrow(), 0.5, Terrain.OPEN, OptionalDouble.empty(), false);
        assertThat(cord.with(wind).result().launch().marginFraction()).isCloseTo(0.1, within(1e-5));
        Needed throwing =
                THROWN.with(new Launch.Hand(8, 0.1, 1.8)).result().launch().needed();
        assertThat(THROWN.with(new Launch.Hand(throwing.releaseSpeedMPerS().orElseThrow(), 0.1, 1.8))
                        .result()
                        .launch()
                        .marginFraction())
                .isCloseTo(0.1, within(1e-5));
    }

    @Test
    void twoNumbersOfASentenceCanBeToldApart() {
        double stall = THROWN.result().stallSpeedMPerS();
        LaunchAndClimbResult near =
                THROWN.with(new Launch.Hand(stall - 0.004, 0, 1.8)).result();
        Finding finding = finding(near, "launch-below-stall");
        assertThat(finding.message())
                .contains("10.127 m/s", "10.131 m/s", "throw at 11.2 m/s, or wait for 1.4 m/s of wind");
    }

    /** A wing of no aspect ratio makes a drag that no step follows. */
    @Test
    void aPathThatCannotBeFollowedIsRefused() {
        LaunchSetting absurd = THROWN.with(new DragPolar(0.03, 1e300, 0));
        assertThatThrownBy(absurd::result).isInstanceOf(ImpossibleValue.class).hasMessageContaining("no path");
    }

    private static Check check(LaunchAndClimbResult result, String code) {
        return result.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void impossibleInputIsRefused() {
        assertThatThrownBy(() -> new Launch.Hand(9, 0, 0)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Turn(0.9)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new ThrustCurve(List.of())).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Airframe(5, 0.6, 2.4, 0)).isInstanceOf(ImpossibleValue.class);
    }
}
