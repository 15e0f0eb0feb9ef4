package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.numeric.ImpossibleValue;

/** What is judged of a pack, and what is said of it. */
class PackChecksTest {
    private static final Surroundings WARM = Surroundings.of(298.15, Covering.WRAPPED);

    @Test
    void theListOfChecksIsTheSameWhateverIsKnown() {
        PackEnergy known = of(pack(cell(Chemistry.LI_ION, 4.9, 69, 32)), 145, new Cutoff.PackVoltage(18), WARM);
        PackEnergy bare = of(pack(Cells.nmc(4.9)), 145, new Cutoff.CellMinimum(), Surroundings.of(260, Covering.BARE));
        assertThat(codes(bare)).isEqualTo(codes(known));
        assertThat(check(bare, "cell-current").outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(check(bare, "cell-specific-energy").give()).hasSize(1);
        assertThat(check(bare, "cutoff-against-minimum").outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(known.judgement().checks())
                .filteredOn(Check::essential)
                .extracting(Check::outcome)
                .containsOnly(Outcome.PASSED);
    }

    @Test
    void aSoundPackHasFewFindings() {
        PackEnergy sound = of(pack(cell(Chemistry.LI_ION, 4.9, 69, 32)), 145, new Cutoff.PackVoltage(18), WARM);
        assertThat(sound.judgement().findings())
                .allMatch(it -> it.severity() == Severity.NOTE)
                .hasSizeLessThan(3);
    }

    @Test
    void aControllerThatCountsByItselfIsJudgedAtTheChargeThatThePackHas() {
        Pack part = Cells.pack(new Segment(12, 4, Cells.nmc(5), 1, 0.6));
        Finding misread = finding(of(part, 200, new Cutoff.CountedCells(3.1, 12, false), WARM), "cell-count-misread");
        assertThat(misread.value()).hasValue(11);
        assertThat(misread.message()).contains("at 60 % charge", "11 cells instead of 12", "34.1 V");
    }

    @Test
    void aCountMeansNothingToWhoWatchesTheWeakestCell() {
        Pack part = Cells.pack(new Segment(12, 4, Cells.nmc(5), 1, 0.6));
        PackEnergy watched = of(part, 200, new Cutoff.CellVoltage(3.1), WARM);
        assertThat(check(watched, "cell-count").outcome()).isEqualTo(Outcome.PASSED);
        assertThat(watched.judgement().findings()).noneMatch(it -> it.code().startsWith("cell-count"));
    }

    @Test
    void aCountThatEndsTheFlightInSecondsIsAStop() {
        PackEnergy short6 =
                of(pack(cell(Chemistry.LI_ION, 4.9, 69, 32)), 145, new Cutoff.CountedCells(3.1, 8, true), WARM);
        assertThat(finding(short6, "cell-count-misread").severity()).isEqualTo(Severity.STOP);
        assertThat(short6.judgement().findings())
                .filteredOn(it -> it.severity() == Severity.STOP)
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"25, 70, STOP", "4.9, 55, ATTENTION", "4.9, 69, ", "4.9, 200, ATTENTION", "4.9, 1656, STOP"})
    void energyForItsMass(double capacityAh, double massG, Severity severity) {
        Cell cell = cell(Chemistry.LI_ION, capacityAh, massG, 160 / capacityAh);
        expect(of(pack(cell), 145, new Cutoff.PackVoltage(18), WARM), "specific-energy-implausible", severity);
    }

    @ParameterizedTest
    @CsvSource({"0.032, STOP", "2, ATTENTION", "15, ", "32, ", "250, ", "400, ATTENTION", "5000, STOP"})
    void resistanceForItsCapacity(double milliohm, Severity severity) {
        Cell cell = cell(Chemistry.LI_ION, 4.9, 69, milliohm);
        expect(of(pack(cell), 20, new Cutoff.PackVoltage(15), WARM), "resistance-not-credible", severity);
    }

    /** A high-current pouch: R Q of 0.021 Ω Ah was measured on one. */
    @Test
    void aPouchForHighCurrentsIsCredible() {
        Cell pouch = cell(Chemistry.LIPO, 5, 125, 4.5);
        expect(of(pack(pouch), 145, new Cutoff.PackVoltage(19), WARM), "resistance-not-credible", null);
    }

    @Test
    void aMassThatIsGivenIsTheMass() {
        Cell cell = Cells.nmc(4.9);
        Segment block = new Segment("front", 4, 3, cell, 1, 1, OptionalDouble.of(0.900));
        assertThat(Cells.pack(block).massKg()).isEqualTo(0.900);
        assertThat(block.knownCellMassKg().orElseThrow()).isCloseTo(0.900 / 1.1 / 12, within(1e-12));
        PackEnergy energy = of(Cells.pack(block), 100, new Cutoff.PackVoltage(12), WARM);
        assertThat(check(energy, "cell-specific-energy").outcome()).isEqualTo(Outcome.PASSED);
        assertThat(check(energy, "cell-specific-energy").about()).contains("front");
    }

    @Test
    void withoutARatingNoGreatestPowerIsGiven() {
        Pack half = Cells.pack(Segment.full(4, 2, Cells.rated(5, 10)), Segment.full(2, 2, Cells.nmc(5)));
        assertThat(of(half, 145, new Cutoff.PackVoltage(18), WARM).allowed()).isEmpty();
        assertThat(PackRatings.of(half).maxContinuousCurrentA()).isEmpty();
        assertThat(of(pack(Cells.rated(5, 10)), 145, new Cutoff.PackVoltage(18), WARM)
                        .allowed())
                .isPresent();
    }

    @Test
    void aCurrentThatLeavesNothingOfTheVoltageEndsTheRun() {
        Pack leaded = new Pack(List.of(Segment.full(6, 1, Cell.typical(Chemistry.LIPO, 36_000))), 3);
        PackEnergy none = PackEnergy.of(new PackTask(leaded, new Load.Current(9), new Cutoff.CellMinimum(), WARM, 0.2));
        assertThat(none.budget().usableEnergyJ()).isZero();
        assertThat(none.discharge().startVoltageV()).isPositive();
        assertThat(finding(none, "pack-below-power-limit").severity()).isEqualTo(Severity.STOP);
        PackEnergy later =
                PackEnergy.of(new PackTask(leaded, new Load.Current(6.7), new Cutoff.PackVoltage(0.5), WARM, 0.2));
        assertThat(later.discharge().lowestVoltageV()).isPositive();
        assertThat(later.budget().usableEnergyJ()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"1e-307", "1e-100", "1e-12", "0.001"})
    void nextToNoPowerComesToAnEnd(double powerW) {
        PackEnergy slow = Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5), () -> of(pack(Cells.nmc(5)), powerW, new Cutoff.CellMinimum(), WARM));
        assertThat(slow.discharge().steps()).hasSize(1);
    }

    /** Half a degree decides whether this pouch flies: the coldest that does is told how near it was. */
    @Test
    void aColdPouchSaysHowNearTheCutoffItsFirstSecondsCome() {
        Cell pouch = cell(Chemistry.LIPO, 5, 115, 24);
        double startC = -25;
        while (cold(pouch, startC).discharge().durationS() == 0) {
            startC += 0.5;
        }
        assertThat(finding(cold(pouch, startC - 0.5), "cutoff-at-once").severity())
                .isEqualTo(Severity.STOP);
        Finding near = finding(cold(pouch, startC), "voltage-near-cutoff");
        assertThat(near.severity()).isEqualTo(Severity.ATTENTION);
        assertThat(near.value().orElseThrow()).isBetween(0.0, 0.1);
        assertThat(near.limit()).hasValue(0.1);
        assertThat(cold(pouch, startC + 20).judgement().findings())
                .noneMatch(it -> it.code().equals("voltage-near-cutoff"));
    }

    private static PackEnergy cold(Cell cell, double startC) {
        return of(
                Cells.pack(Segment.full(6, 2, cell)),
                160,
                new Cutoff.CellMinimum(),
                Surroundings.of(startC + 273.15, Covering.WRAPPED));
    }

    @Test
    void anOwnCurveIsWorkedOutOnce() {
        List<OpenCircuitPoint> curve =
                List.of(new OpenCircuitPoint(0, 3.0), new OpenCircuitPoint(0.5, 3.8), new OpenCircuitPoint(1, 4.2));
        Cell own = custom(Chemistry.LIPO, curve);
        assertThat(CellModel.of(own, 1).set().electrodes())
                .isSameAs(CellModel.of(own, 0.9).set().electrodes());
        assertThat(own).isEqualTo(custom(Chemistry.LIPO, curve));
    }

    @Test
    void aCustomCellBehavesLikeTheChemistryThatItNames() {
        List<OpenCircuitPoint> curve = List.of(
                new OpenCircuitPoint(0, 3.0),
                new OpenCircuitPoint(0.1, 3.5),
                new OpenCircuitPoint(0.5, 3.8),
                new OpenCircuitPoint(1, 4.2));
        assertThat(custom(Chemistry.LIPO, curve).massOrTypicalKg())
                .isGreaterThan(custom(Chemistry.LI_ION, curve).massOrTypicalKg());
        Surroundings cold = Surroundings.of(263.15, Covering.WRAPPED);
        assertThat(usableJ(custom(Chemistry.LIPO, curve), cold))
                .isNotCloseTo(usableJ(custom(Chemistry.LI_ION, curve), cold), within(1000.0));
        assertThatThrownBy(() -> custom(Chemistry.CUSTOM, curve)).isInstanceOf(ImpossibleValue.class);
    }

    private static double usableJ(Cell cell, Surroundings air) {
        return of(pack(cell), 145, new Cutoff.PackVoltage(19), air).budget().usableEnergyJ();
    }

    private static Cell custom(Chemistry dynamics, List<OpenCircuitPoint> curve) {
        return new Cell(
                Chemistry.CUSTOM,
                dynamics,
                18_000,
                new InternalResistance.Typical(),
                OptionalDouble.empty(),
                CellLimits.UNKNOWN,
                OpenCircuitCurve.of(curve));
    }

    private static Cell cell(Chemistry chemistry, double capacityAh, double massG, double milliohm) {
        return new Cell(
                chemistry,
                capacityAh * 3600,
                new InternalResistance.Dc(milliohm / 1000),
                OptionalDouble.of(massG / 1000),
                new CellLimits(
                        OptionalDouble.of(60), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                List.of());
    }

    private static Pack pack(Cell cell) {
        return Cells.pack(Segment.full(6, 4, cell));
    }

    private static PackEnergy of(Pack pack, double powerW, Cutoff cutoff, Surroundings air) {
        return PackEnergy.of(new PackTask(pack, new Load.Power(powerW), cutoff, air, 0.2));
    }

    private static void expect(PackEnergy energy, String code, Severity severity) {
        if (severity == null) {
            assertThat(energy.judgement().findings()).noneMatch(it -> it.code().equals(code));
        } else {
            assertThat(finding(energy, code).severity()).isEqualTo(severity);
        }
    }

    private static List<String> codes(PackEnergy energy) {
        return energy.judgement().checks().stream().map(Check::code).toList();
    }

    private static Check check(PackEnergy energy, String code) {
        return energy.judgement().checks().stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static Finding finding(PackEnergy energy, String code) {
        return energy.judgement().findings().stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        code + " not in " + energy.judgement().findings()));
    }
}
