package trestle.propulsion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.atmosphere.StandardAtmosphere;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.units.Rotation;

/** What is judged of a drive, whatever is given, and the slips that are named. */
class PropulsionChecksTest {

    /** Level flight turns the propeller no faster than its maker allows; only a dive does. */
    @Test
    void aPropellerThatOnlyADiveTurnsTooFastIsNotStopped() {
        PropulsionTask plain = Drives.task(Drives.system());
        DrivePerformance drive = PropulsionMatch.of(plain).performance();
        double levelRadPerS = drive.fastest().orElseThrow().rotationRadPerS();
        double endRadPerS = drive.curve().get(drive.curve().size() - 1).rotationRadPerS();
        assertThat(endRadPerS).isGreaterThan(1.02 * levelRadPerS);
        PropulsionMatch match = PropulsionMatch.of(Drives.task(Drives.with(rated((levelRadPerS + endRadPerS) / 2))));
        Finding dive = Drives.only(match, "propeller-speed-in-dive");
        assertThat(dive.severity()).isEqualTo(Severity.NOTE);
        assertThat(match.judgement().findings())
                .extracting(Finding::code)
                .doesNotContain("propeller-rotation-exceeded", "throttle-limit");
        assertThat(match.headroom().propellerRotationFraction().orElseThrow()).isPositive();
        assertThat(Drives.only(
                                PropulsionMatch.of(Drives.task(Drives.with(rated(0.95 * levelRadPerS)))),
                                "throttle-limit")
                        .severity())
                .isEqualTo(Severity.STOP);
    }

    private static Propeller rated(double maxRadPerS) {
        return new Propeller(0.4064, 0.2032, 2, BladeType.EFFICIENT, new GeometryOnly(), OptionalDouble.of(maxRadPerS));
    }

    @Test
    void aLiftCoefficientThatNoWingHasStops() {
        assertThat(Drives.only(PropulsionMatch.of(lifting(5, 1.2)), "lift-coefficient-exceeded")
                        .message())
                .contains("5.00 m/s", "4.80", "1.20", "10.00 m/s", "12.0 m/s");
        assertThat(Drives.only(PropulsionMatch.of(lifting(11, 1.2)), "lift-coefficient-thin")
                        .severity())
                .isEqualTo(Severity.ATTENTION);
        assertThat(PropulsionMatch.of(lifting(13, 1.2)).judgement().findings()).isEmpty();
    }

    /** It stalls at 10 m/s at a lift coefficient of 1.2. */
    private static PropulsionTask lifting(double airspeedMPerS, double maxLiftCoefficient) {
        PropulsionTask plain = Drives.task(Drives.system());
        double density = plain.air().densityKgPerM3();
        DragCurve drag = new LoadedDrag(v -> Drives.dragN(v, 0.028), 0.5 * density * 100 * 0.9 * 1.2, 0.9, density);
        return new PropulsionTask(
                plain.system(),
                plain.air(),
                Optional.of(new CruiseDemand(airspeedMPerS, drag)),
                plain.takeoffMassKg(),
                plain.airspeedsMPerS(),
                DriveLimits.ofLift(maxLiftCoefficient));
    }

    /** Ohm for milliohm makes the motor too good, rad/s per volt for rpm/V too slow. */
    @Test
    void unitsThatSlippedAreNamed() {
        Motor inOhm = new Motor(
                Rotation.radPerSFromRpm(320),
                0.00005,
                1.2,
                OptionalDouble.of(20),
                OptionalDouble.of(60),
                OptionalDouble.of(1300));
        Finding resistance =
                Drives.only(PropulsionMatch.of(Drives.task(Drives.with(inOhm))), "motor-constants-implausible");
        assertThat(resistance.severity()).isEqualTo(Severity.STOP);
        assertThat(resistance.message()).contains("0.05 mΩ is not in ohm");
        Motor tenthOfKv = new Motor(
                Rotation.radPerSFromRpm(33.5),
                0.05,
                1.2,
                OptionalDouble.of(20),
                OptionalDouble.of(60),
                OptionalDouble.of(1300));
        Finding constant = Drives.only(PropulsionMatch.of(Drives.task(Drives.with(tenthOfKv))), "motor-hardly-loaded");
        assertThat(constant.severity()).isEqualTo(Severity.STOP);
        assertThat(constant.message()).contains("33.5 rpm/V");
    }

    @Test
    void theListOfChecksIsTheSameWhateverIsGiven() {
        List<String> whole = checks(Drives.task(Drives.system()));
        PropulsionTask alone = new PropulsionTask(
                Drives.with(Supply.steady(22)), Drives.AIR, Optional.empty(), OptionalDouble.empty(), List.of(80.0));
        assertThat(checks(alone)).isEqualTo(whole);
        StaticTest test = new StaticTest(Rotation.radPerSFromRpm(6000), 20, 300, StandardAtmosphere.at(0));
        assertThat(checks(Drives.task(Drives.with(
                        new Propeller(0.4064, 0.2032, 2, BladeType.EFFICIENT, test, OptionalDouble.empty())))))
                .isEqualTo(whole);
        assertThat(checks(Drives.task(Drives.with(Drives.pack(24.5, 1000))))).isEqualTo(whole);
    }

    private static List<String> checks(PropulsionTask task) {
        return PropulsionMatch.of(task).judgement().checks().stream()
                .map(check -> check.code() + " " + check.about())
                .toList();
    }

    @Test
    void whatTheVerdictHangsOnIsJudgedOrNamesWhatToGive() {
        PropulsionTask alone = new PropulsionTask(
                Drives.with(Supply.steady(22)), Drives.AIR, Optional.empty(), OptionalDouble.empty(), List.of());
        List<Check> essential = PropulsionMatch.of(alone).judgement().checks().stream()
                .filter(Check::essential)
                .toList();
        assertThat(essential)
                .extracting(Check::code)
                .containsExactly(
                        "controller-voltage",
                        "motor-current",
                        "motor-power",
                        "controller-current",
                        "pack-current",
                        "propeller-rotation",
                        "lift-coefficient",
                        "cruise-thrust");
        assertThat(essential)
                .filteredOn(check -> check.outcome() == Outcome.NOT_JUDGED)
                .extracting(Check::code)
                .containsExactly("pack-current", "propeller-rotation", "lift-coefficient", "cruise-thrust");
        assertThat(essential)
                .filteredOn(check -> check.outcome() == Outcome.NOT_JUDGED)
                .allSatisfy(check -> assertThat(check.give()).isNotEmpty());
    }
}
