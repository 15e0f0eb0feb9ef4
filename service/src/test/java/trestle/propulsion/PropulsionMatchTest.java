package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.numeric.ImpossibleValue;
import trestle.units.Rotation;

class PropulsionMatchTest {

    @Test
    void aSoundDriveFliesWithoutAWord() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.system()));
        DrivePerformance drive = match.performance();
        OperatingPoint cruise = drive.cruise().orElseThrow();
        assertThat(match.judgement().findings()).isEmpty();
        assertThat(cruise.thrustN()).isCloseTo(Drives.dragN(Drives.CRUISE_M_PER_S, 0.028), within(1e-6));
        assertThat(cruise.throttleFraction()).isBetween(0.3, 0.8);
        assertThat(drive.thrustToWeightRatio().orElseThrow())
                .isCloseTo(
                        drive.atRest().orElseThrow().thrustN() / (8 * StandardAtmosphere.GRAVITY_M_PER_S2),
                        within(1e-12));
        assertThat(drive.curve()).hasSize(21);
        assertThat(drive.pitchSpeedMPerS().orElseThrow())
                .isCloseTo(
                        Rotation.rpmFromRadPerS(drive.atRest().orElseThrow().rotationRadPerS()) / 60 * 8 * 0.0254,
                        within(1e-9));
    }

    @Test
    void atTopSpeedThrustIsDrag() {
        PropulsionTask task = Drives.task(Drives.system());
        DrivePerformance drive = PropulsionMatch.of(task).performance();
        double top = drive.topSpeedMPerS().orElseThrow();
        assertThat(PowerTrain.of(task.system(), task.air()).thrustN(top).orElseThrow())
                .isCloseTo(Drives.dragN(top, 0.028), within(1e-4));
        assertThat(top).isLessThan(drive.zeroThrustSpeedMPerS().orElseThrow());
    }

    @Test
    void curveFollowsTheAirspeedsAskedAndLeavesOutWhatTheWindDrives() {
        PropulsionTask task = new PropulsionTask(
                Drives.system(), Drives.AIR, Optional.empty(), OptionalDouble.empty(), List.of(20.0, 0.0, 80.0));
        PropulsionMatch match = PropulsionMatch.of(task);
        assertThat(match.performance().curve())
                .extracting(OperatingPoint::airspeedMPerS)
                .containsExactly(20.0, 0.0);
        Finding beyond = Drives.only(match, "airspeed-beyond-thrust");
        assertThat(beyond.severity()).isEqualTo(Severity.NOTE);
        assertThat(beyond.subject()).isEqualTo(Subject.of(PropulsionPart.AIRSPEED, 2));
        assertThat(match.performance().thrustToWeightRatio()).isEmpty();
    }

    @Test
    void thinAirTakesThrustAndAddsTipMach() {
        DrivePerformance low = PropulsionMatch.of(Drives.task(Drives.system())).performance();
        PropulsionTask task = Drives.task(Drives.system());
        DrivePerformance high = PropulsionMatch.of(new PropulsionTask(
                        task.system(),
                        StandardAtmosphere.at(3000),
                        task.cruise(),
                        task.takeoffMassKg(),
                        task.airspeedsMPerS()))
                .performance();
        assertThat(high.atRest().orElseThrow().thrustN())
                .isLessThan(low.atRest().orElseThrow().thrustN());
        assertThat(high.tipMachRatio().orElseThrow())
                .isGreaterThan(low.tipMachRatio().orElseThrow());
    }

    @Test
    void propellerThatStallsTheMotorStopsAndTheRestStands() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(hugePropeller())));
        Finding stalled = Drives.only(match, "motor-stalled");
        assertThat(stalled.severity()).isEqualTo(Severity.STOP);
        assertThat(stalled.value().orElseThrow()).isGreaterThan(stalled.limit().orElseThrow());
        assertThat(Drives.only(match, "motor-current-exceeded").limit()).hasValue(60);
        assertThat(Drives.only(match, "motor-power-exceeded").limit()).hasValue(1300);
        assertThat(Drives.only(match, "controller-current-exceeded").limit()).hasValue(80);
        assertThat(Drives.only(match, "pack-current-exceeded").limit()).hasValue(60);
        assertThat(match.headroom().motorCurrentFraction().orElseThrow()).isNegative();
        assertThat(match.performance().atRest()).isPresent();
        assertThat(match.performance().cruise()).isPresent();
        assertThat(match.performance().curve()).isNotEmpty();
    }

    /** 40 x 30 in on a motor that is wound for 16 x 8 in. */
    private static Propeller hugePropeller() {
        return Drives.propeller(40, 30);
    }

    @Test
    void controllerBelowTheFullPackStopsAndTheRestStands() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(new Controller(80, 17, 0.003))));
        Finding finding = Drives.only(match, "controller-voltage-exceeded");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.value()).hasValue(25.2);
        assertThat(finding.limit()).hasValue(17);
        assertThat(finding.message()).contains("25.2 V").contains("17.0 V");
        assertThat(match.headroom().controllerVoltageFraction().orElseThrow()).isCloseTo(1 - 25.2 / 17, within(1e-12));
        assertThat(match.performance().cruise()).isPresent();
    }

    @Test
    void thrustThatNeverReachesDragStopsAndTheRestStands() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.system(), 3));
        Finding never = Drives.only(match, "thrust-never-reaches-drag");
        assertThat(never.severity()).isEqualTo(Severity.STOP);
        assertThat(never.value().orElseThrow()).isLessThan(never.limit().orElseThrow());
        assertThat(match.judgement().findings())
                .extracting(Finding::code)
                .doesNotContain("cruise-thrust-short", "cruise-throttle-high");
        assertThat(match.performance().cruise()).isEmpty();
        assertThat(match.performance().topSpeedMPerS()).isEmpty();
        assertThat(match.performance().atRest()).isPresent();
        assertThat(match.performance().curve()).hasSize(21);
    }

    @Test
    void supplyThatCollapsesIsAFindingNotAnException() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(Drives.pack(24.5, 1000))));
        assertThat(Drives.only(match, "propeller-not-turned").severity()).isEqualTo(Severity.STOP);
        assertThat(match.performance().atRest()).isEmpty();
        assertThat(match.performance().curve()).isEmpty();
        assertThat(match.headroom().motorCurrentFraction()).isEmpty();
    }

    @Test
    void packPastItsPowerPeakStops() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(Drives.pack(24.5, 2))));
        assertThat(Drives.only(match, "pack-past-power-peak").severity()).isEqualTo(Severity.STOP);
        PropulsionMatch softer = PropulsionMatch.of(Drives.task(Drives.with(Drives.pack(24.5, 0.25))));
        assertThat(Drives.only(softer, "pack-sags").severity()).isEqualTo(Severity.ATTENTION);
    }

    @Test
    void cutoffAboveTheVoltageAtFullThrottleStops() {
        double underLoadV = PropulsionMatch.of(Drives.task(Drives.system()))
                .performance()
                .atRest()
                .orElseThrow()
                .supplyVoltageV();
        Supply pack = Drives.pack();
        Supply early =
                new Supply(pack.source(), pack.fullVoltageV(), pack.maxCurrentA(), OptionalDouble.of(underLoadV + 0.1));
        Finding finding = Drives.only(PropulsionMatch.of(Drives.task(Drives.with(early))), "cutoff-at-full-throttle");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.subject()).isEqualTo(Subject.of(PropulsionPart.SUPPLY_CUTOFF));
        assertThat(finding.value().orElseThrow()).isCloseTo(underLoadV, within(1e-9));
    }

    /**
     * At these airspeeds the wind brings the slowest shaft looked at to no voltage at all, where an
     * idle power would ask for a current without end.
     */
    @Test
    void fullThrottleHasAStateAtEveryAirspeedBelowTheEndOfThrust() {
        assertThat(powerful(600, 14).atFullThrottle(60.775)).isPresent();
        assertThat(powerful(450, 16).atFullThrottle(62.579)).isPresent();
        assertThat(powerful(400, 18).atFullThrottle(49.499)).isPresent();
        assertThat(powerful(600, 20).atFullThrottle(15.255)).isPresent();
    }

    private static PowerTrain powerful(double speedConstantRpmPerV, double diameterIn) {
        Motor motor = new Motor(
                Rotation.radPerSFromRpm(speedConstantRpmPerV),
                0.04,
                1.2,
                OptionalDouble.of(20),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return PowerTrain.of(
                new PropulsionSystem(
                        motor, Drives.controller(), Drives.propeller(diameterIn, 0.8 * diameterIn), 1, Drives.pack()),
                Drives.AIR);
    }

    /** Thrust passes drag at the cruise airspeed by a hair and nowhere else. */
    @Test
    void aDriveThatHoldsNothingButCruiseHasItsTopSpeedThere() {
        PropulsionTask task = Drives.task(Drives.system());
        double cruise = Drives.CRUISE_M_PER_S;
        double thrustN =
                PowerTrain.of(task.system(), task.air()).thrustN(cruise).orElseThrow();
        DragCurve needle = v -> 0.999 * thrustN + 50 * Math.abs(v - cruise);
        PropulsionMatch match = PropulsionMatch.of(new PropulsionTask(
                task.system(),
                task.air(),
                Optional.of(new CruiseDemand(cruise, needle)),
                OptionalDouble.empty(),
                List.of()));
        assertThat(match.performance().cruise()).isPresent();
        assertThat(match.performance().topSpeedMPerS().orElseThrow()).isCloseTo(cruise, within(0.01));
        assertThat(match.judgement().findings()).extracting(Finding::code).doesNotContain("thrust-never-reaches-drag");
    }

    @Test
    void propellerTurnedFasterThanItsMakerAllowsStops() {
        Propeller fast = new Propeller(
                0.4064,
                0.2032,
                2,
                BladeType.EFFICIENT,
                new GeometryOnly(),
                OptionalDouble.of(Rotation.radPerSFromRpm(6000)));
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(fast)));
        Finding finding = Drives.only(match, "propeller-rotation-exceeded");
        assertThat(finding.limit().orElseThrow()).isCloseTo(6000, within(1e-6));
        assertThat(finding.subject()).isEqualTo(Subject.of(PropulsionPart.PROPELLER_MAX_ROTATION));
    }

    @Test
    void ratingWithinTenPercentAsksForAttention() {
        double needA = PropulsionMatch.of(Drives.task(Drives.system()))
                .performance()
                .atRest()
                .orElseThrow()
                .motorCurrentA();
        Controller close = new Controller(1.05 * needA, 26, 0.003);
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(close)));
        assertThat(Drives.only(match, "controller-current-thin").severity()).isEqualTo(Severity.ATTENTION);
    }

    @Test
    void highCruiseThrottleAsksForAttention() {
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.system(), 0.15));
        assertThat(Drives.only(match, "cruise-throttle-high").value().orElseThrow())
                .isBetween(80.0, 100.0);
    }

    @Test
    void propellersOutsideTheDataAreNamedByWhatIsOutside() {
        Propeller odd = Propeller.ofSize(0.7, 0.9, 6, BladeType.WIDE);
        List<Finding> findings = PropulsionMatch.of(Drives.task(Drives.with(odd))).judgement().findings().stream()
                .filter(f -> f.code().equals("propeller-outside-checked-range"))
                .toList();
        assertThat(findings)
                .extracting(f -> f.subject())
                .contains(
                        Subject.of(PropulsionPart.PROPELLER_DIAMETER),
                        Subject.of(PropulsionPart.PROPELLER_PITCH),
                        Subject.of(PropulsionPart.PROPELLER_BLADES));
        assertThat(findings.get(0).message()).contains("27.56 in").contains("21 in");
        assertThat(PropulsionMatch.of(Drives.task(Drives.with(odd))).judgement().findings().stream()
                        .map(Finding::code))
                .contains("wide-blades-in-cruise");
    }

    @Test
    void staticTestBeyondMomentumTheoryStops() {
        StaticTest test = new StaticTest(Rotation.radPerSFromRpm(6000), 60, 300, StandardAtmosphere.at(0));
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(tested(test))));
        assertThat(Drives.only(match, "static-test-impossible").value().orElseThrow())
                .isGreaterThan(1);
        assertThat(match.judgement().findings()).extracting(Finding::code).contains("static-test-far-from-model");
    }

    @Test
    void tableBeyondMomentumTheoryStopsAtItsRow() {
        CoefficientTable table = new CoefficientTable(List.of(
                new CoefficientRow(0, 0.09, 0.03),
                new CoefficientRow(0.4, 0.06, 0.02),
                new CoefficientRow(0.7, 0, 0.01)));
        Finding finding =
                Drives.only(PropulsionMatch.of(Drives.task(Drives.with(tested(table)))), "propeller-table-impossible");
        assertThat(finding.subject()).isEqualTo(Subject.of(PropulsionPart.PROPELLER_TABLE, 1));
    }

    /** Each row keeps momentum theory, the middle between the last two does not. */
    @Test
    void tableBeyondMomentumTheoryBetweenItsRowsStops() {
        CoefficientTable table = new CoefficientTable(List.of(
                new CoefficientRow(0, 0.09, 0.04),
                new CoefficientRow(0.4, 0.06, 0.04),
                new CoefficientRow(0.8, -0.001, -0.02)));
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(tested(table))));
        Finding finding = Drives.only(match, "propeller-table-impossible-in-flight");
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.value().orElseThrow()).isGreaterThan(finding.limit().orElseThrow());
        assertThat(match.judgement().findings()).extracting(Finding::code).doesNotContain("propeller-table-impossible");
    }

    @Test
    void measuredTableRunsTheDriveAndSaysWhereItEnds() {
        CoefficientTable table = new CoefficientTable(List.of(
                new CoefficientRow(0.1, 0.085, 0.030),
                new CoefficientRow(0.3, 0.058, 0.027),
                new CoefficientRow(0.45, 0.034, 0.020)));
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(tested(table))));
        assertThat(Drives.only(match, "propeller-table-exceeded").severity()).isEqualTo(Severity.ATTENTION);
        OperatingPoint atRest = match.performance().atRest().orElseThrow();
        double revPerS = atRest.rotationRadPerS() / (2 * Math.PI);
        assertThat(atRest.thrustN())
                .isCloseTo(0.085 * Drives.AIR.densityKgPerM3() * revPerS * revPerS * Math.pow(0.4064, 4), within(1e-6));
        assertThat(match.performance().topSpeedMPerS()).isPresent();
    }

    @Test
    void aTableThatRisesToItsEndStillLosesThrustSomewhere() {
        CoefficientTable table =
                new CoefficientTable(List.of(new CoefficientRow(0, 0.08, 0.04), new CoefficientRow(0.2, 0.085, 0.041)));
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(tested(table))));
        assertThat(match.performance().zeroThrustSpeedMPerS()).isPresent();
        assertThat(match.performance().topSpeedMPerS()).isPresent();
    }

    @Test
    void impossibleEntriesAreRefusedByName() {
        assertThatThrownBy(() -> new CoefficientRow(0.1, 0.05, -0.01))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessageContaining("-0.01");
        assertThatThrownBy(() -> new CoefficientTable(List.of(new CoefficientRow(0, 0.1, 0.04))))
                .isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> Drives.propeller(0, 8)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() ->
                        new Motor(30, 5, 3, OptionalDouble.of(10), OptionalDouble.empty(), OptionalDouble.empty()))
                .isInstanceOf(ImpossibleValue.class);
    }

    @Test
    void dragThroughOnePointGoesWithTheSquareOfAirspeed() {
        assertThat(DragCurve.through(5, 15).dragN(30)).isCloseTo(20, within(1e-12));
    }

    @Test
    void assumptionsNameThePropellersModelAndTheMissingNoLoadVoltage() {
        Motor plain = new Motor(33, 0.05, 1.2, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(plain)));
        assertThat(match.judgement().assumptions())
                .extracting(a -> a.subject())
                .contains(
                        Subject.of(PropulsionPart.PROPELLER_BLADE_TYPE),
                        Subject.of(PropulsionPart.MOTOR_NO_LOAD_CURRENT));
    }

    private static Propeller tested(PropellerData data) {
        return new Propeller(0.4064, 0.2032, 2, BladeType.EFFICIENT, data, OptionalDouble.empty());
    }
}
