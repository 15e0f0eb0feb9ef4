package trestle.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.numeric.ImpossibleValue;

/** The whole answer: budget, findings, assumptions, degenerate packs. */
class PackEnergyTest {
    private static final Surroundings ROOM = Surroundings.of(293.15, Covering.BARE);

    @Test
    void aTwelveCellPackAtCruise() {
        PackEnergy energy = of(pack(Cells.rated(5, 100)), 200, new Cutoff.CellVoltage(3.0), 0.2);
        assertThat(energy.ratings().seriesCount()).isEqualTo(12);
        assertThat(energy.ratings().nominalEnergyJ() / 3600).isCloseTo(864, within(0.1));
        assertThat(energy.cutoffVoltageV()).isCloseTo(36, within(1e-9));
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.CUTOFF);
        assertThat(energy.budget().usableEnergyJ())
                .isCloseTo(200 * energy.budget().durationS(), withPercentage(1e-9));
        assertThat(energy.budget().durationToReserveS())
                .isCloseTo(0.8 * energy.budget().durationS(), withPercentage(1e-6));
        // The last step is a straight line to the cutoff: a millivolt a cell, where 3 mV are a
        // watt.
        assertThat(energy.allowed().orElseThrow().endW()).isCloseTo(200, within(0.5));
        assertThat(energy.allowed().orElseThrow().startW())
                .isGreaterThan(energy.allowed().orElseThrow().midW());
        assertThat(codes(energy)).containsExactlyInAnyOrder("generic-cell");
    }

    /** NMC at 25 °C and C/4 keeps 0.756 above 3.5 V: reference/battery-cutoffs. */
    @Test
    void aHighCutoffLeavesEnergyBelowIt() {
        PackEnergy energy = of(pack(Cells.nmc(5)), 200, new Cutoff.CellVoltage(3.5), 0.2);
        assertThat(energy.budget().fractionBelowCutoff()).isCloseTo(0.244, within(0.03));
        assertThat(finding(energy, "energy-below-cutoff").severity()).isEqualTo(Severity.ATTENTION);
    }

    @Test
    void whatLiesAboveAndBelowTheCutoffTogetherDoNotDependOnTheCutoff() {
        double low = all(of(pack(Cells.nmc(5)), 200, new Cutoff.CellVoltage(2.8), 0));
        double high = all(of(pack(Cells.nmc(5)), 200, new Cutoff.CellVoltage(3.4), 0));
        assertThat(high).isCloseTo(low, withPercentage(0.05));
    }

    @Test
    void theCurveIsThinnedAndKeepsItsEnds() {
        PackEnergy energy = of(pack(Cells.nmc(5)), 200, new Cutoff.CellVoltage(2.6), 0);
        List<CurvePoint> curve = energy.curve();
        assertThat(curve).hasSizeBetween(50, PackEnergy.MOST_POINTS);
        assertThat(curve.get(0).timeS()).isZero();
        CurvePoint last = curve.get(curve.size() - 1);
        assertThat(last.timeS()).isEqualTo(energy.discharge().durationS());
        assertThat(last.voltageV()).isCloseTo(31.2, within(0.01));
        assertThat(curve).isSortedAccordingTo((a, b) -> Double.compare(a.timeS(), b.timeS()));
    }

    @Test
    void moreThanThePackCanGiveIsAFindingNotANumberOutOfNowhere() {
        PackEnergy energy = of(pack(Cells.nmc(5)), 1e6, new Cutoff.CellMinimum(), 0.2);
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.POWER_LIMIT);
        assertThat(energy.budget().durationS()).isZero();
        assertThat(energy.budget().usableEnergyJ()).isZero();
        assertThat(finding(energy, "pack-below-power-limit").severity()).isEqualTo(Severity.STOP);
    }

    /** A step of these discharges lasts up to 35 s, the controller's filter 5 s. */
    @ParameterizedTest
    @ValueSource(doubles = {60, 80, 100, 120, 140, 160, 180, 200})
    void aProfileEndsWhenTheFilterHasHeldNotWhenTheStepEnds(double powerW) {
        Cutoff cutoff = new Cutoff.CellVoltage(3.0);
        Load profile = new Load.Profile(List.of(new PowerStep(powerW, 100_000)));
        double steadyS = of(pack(Cells.nmc(5)), powerW, cutoff, 0).discharge().durationS();
        double heldS = of(pack(Cells.nmc(5)), profile, cutoff, 0).discharge().durationS();
        assertThat(heldS - steadyS).isCloseTo(DischargeRun.PROFILE_HOLD_S, within(0.5));
    }

    @Test
    void aWeakSegmentIsOverDischargedUnderAPackCutoff() {
        Pack pack = Cells.pack(Segment.full(8, 4, Cells.nmc(5)), new Segment(4, 4, Cells.nmc(5), 1, 0.7));
        PackEnergy energy = of(pack, 200, new Cutoff.PackVoltage(33), 0.2);
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.OVER_DISCHARGE);
        assertThat(energy.discharge().limitingSegment()).isEqualTo(1);
        assertThat(energy.discharge().segments().get(1).cellVoltageV()).isCloseTo(2.5, within(0.01));
        assertThat(energy.times().packS()).isGreaterThan(energy.times().weakestCellS());
        assertThat(codes(energy)).contains("segment-reversal").doesNotContain("over-discharge", "weak-segment");
    }

    @Test
    void theFlightLegsOfAProfileAreReported() {
        Load load = new Load.Profile(List.of(
                new PowerStep(800, 90), new PowerStep(200, 3000), new PowerStep(0, 60), new PowerStep(150, 600)));
        PackEnergy energy =
                PackEnergy.of(new PackTask(pack(Cells.nmc(5)), load, new Cutoff.CellVoltage(3.0), ROOM, 0.2));
        List<StepOutcome> steps = energy.discharge().steps();
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.PROFILE_END);
        assertThat(steps).hasSize(4).allMatch(StepOutcome::completed);
        assertThat(steps.get(1).startS()).isEqualTo(90);
        assertThat(steps.get(1).energyJ()).isCloseTo(600_000, within(1e-3));
        assertThat(steps.get(2).energyJ()).isZero();
        assertThat(steps.get(2).startVoltageV()).isGreaterThan(steps.get(1).endVoltageV());
        assertThat(energy.discharge().energyJ()).isCloseTo(762_000, within(1e-3));
        assertThat(energy.budget().usableEnergyJ()).isGreaterThan(2_500_000);
    }

    @Test
    void aProfileThatThePackDoesNotSurviveStopsInItsStep() {
        Load load = new Load.Profile(List.of(new PowerStep(200, 3000), new PowerStep(300, 50_000)));
        PackEnergy energy =
                PackEnergy.of(new PackTask(pack(Cells.nmc(5)), load, new Cutoff.CellVoltage(3.0), ROOM, 0.2));
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.CUTOFF);
        assertThat(energy.discharge().steps().get(1).completed()).isFalse();
        assertThat(finding(energy, "profile-not-completed").severity()).isEqualTo(Severity.STOP);
    }

    @Test
    void aShortDipInABurstIsToldAndNotObeyed() {
        PackState low = drained(0.25);
        Load.Profile burst =
                new Load.Profile(List.of(new PowerStep(100, 60), new PowerStep(2500, 3), new PowerStep(100, 60)));
        Discharge discharge = Discharge.of(low, burst, new Cutoff.CellVoltage(3.1));
        assertThat(discharge.ending()).isEqualTo(DischargeEnd.PROFILE_END);
        assertThat(discharge.firstDipS().orElseThrow()).isBetween(59.9, 63.0);
        assertThat(discharge.lowestVoltageV()).isLessThan(12 * 3.1);
    }

    @Test
    void aLongDipEndsTheProfileAfterTheHold() {
        PackState low = drained(0.25);
        Load.Profile burst = new Load.Profile(List.of(new PowerStep(100, 60), new PowerStep(2500, 30)));
        Discharge discharge = Discharge.of(low, burst, new Cutoff.CellVoltage(3.1));
        assertThat(discharge.ending()).isEqualTo(DischargeEnd.CUTOFF);
        assertThat(discharge.durationS())
                .isCloseTo(discharge.firstDipS().orElseThrow() + DischargeRun.PROFILE_HOLD_S, within(1e-6));
    }

    @Test
    void coldHotAndHardDrivenPacksAreTold() {
        Surroundings frost = Surroundings.of(258.15, Covering.WRAPPED);
        assertThat(codes(inAir(frost, 200))).contains("cold-pack");
        Surroundings boxed = Surroundings.of(308.15, Covering.BOXED);
        assertThat(codes(inAir(boxed, 1500))).contains("cells-too-hot");
        assertThat(codes(inAir(ROOM, 2200))).contains("outside-validated-range");
    }

    @Test
    void aCurrentAboveTheCellsRatingIsTold() {
        Cell rated = new Cell(
                Chemistry.LI_ION,
                18_000,
                new InternalResistance.Dc(0.030),
                OptionalDouble.of(0.070),
                new CellLimits(
                        OptionalDouble.of(2), OptionalDouble.of(2.5), OptionalDouble.empty(), OptionalDouble.empty()),
                List.of());
        PackEnergy energy = of(pack(rated), 400, new Cutoff.CellMinimum(), 0.2);
        assertThat(energy.ratings().maxContinuousCurrentA()).hasValue(8);
        assertThat(finding(energy, "current-above-cell-rating").severity()).isEqualTo(Severity.STOP);
        assertThat(energy.allowed().orElseThrow().startW()).isLessThan(8 * 50.4);
    }

    @Test
    void aResistanceFromAnAlternatingCurrentIsMarkedAsAGuess() {
        Cell guessed = new Cell(
                Chemistry.LI_ION,
                18_000,
                new InternalResistance.Ac(0.018),
                OptionalDouble.empty(),
                CellLimits.UNKNOWN,
                List.of());
        PackEnergy energy = of(pack(guessed), 200, new Cutoff.CellMinimum(), 0.2);
        assertThat(codes(energy)).contains("resistance-from-ac");
        assertThat(energy.judgement().assumptions()).anyMatch(it -> it.subject().part() == PackPart.AC_RESISTANCE);
    }

    @Test
    void aControllerThatCountsTooFewCellsCutsTooLate() {
        PackEnergy energy = of(pack(Cells.nmc(5)), 200, new Cutoff.CountedCells(3.0, 9, true), 0.2);
        Finding misread = finding(energy, "cell-count-misread");
        assertThat(misread.severity()).isEqualTo(Severity.STOP);
        assertThat(energy.cutoffVoltageV()).isEqualTo(27);
        assertThat(energy.discharge().ending()).isEqualTo(DischargeEnd.OVER_DISCHARGE);
    }

    @Test
    void aPartChargedPackMayBeMiscounted() {
        Pack half = Cells.pack(new Segment(12, 4, Cells.nmc(5), 1, 0.4));
        PackEnergy energy = of(half, 200, new Cutoff.CountedCells(3.3, 12, false), 0.2);
        assertThat(finding(energy, "cell-count-misread").value()).hasValue(10);
    }

    @Test
    void anOwnCurveIsFollowedAndTheRestIsAssumed() {
        List<OpenCircuitPoint> curve = List.of(
                new OpenCircuitPoint(0, 2.8),
                new OpenCircuitPoint(0.1, 3.3),
                new OpenCircuitPoint(0.5, 3.7),
                new OpenCircuitPoint(1, 4.3));
        Cell own = new Cell(
                Chemistry.CUSTOM,
                18_000,
                new InternalResistance.Dc(0.020),
                OptionalDouble.empty(),
                CellLimits.UNKNOWN,
                curve);
        assertThat(own.minimumVoltageV()).isCloseTo(2.8, within(1e-9));
        assertThat(own.fullVoltageV()).isCloseTo(4.3, within(1e-9));
        PackState state = PackState.of(pack(own), ROOM);
        assertThat(state.restVoltageV(0)).isCloseTo(4.3, within(1e-6));
        Pack half = Cells.pack(new Segment(12, 4, own, 1, 0.3));
        assertThat(PackState.of(half, ROOM).restVoltageV(0)).isCloseTo(3.5, within(1e-6));
        PackEnergy energy = of(pack(own), 200, new Cutoff.CellMinimum(), 0.2);
        assertThat(energy.judgement().assumptions()).anyMatch(it -> it.subject().part() == PackPart.CHEMISTRY);
    }

    @Test
    void anAgedPackHoldsLessAndSagsMore() {
        Pack aged = Cells.pack(new Segment(12, 4, Cells.nmc(5), 0.8, 1));
        PackEnergy old = of(aged, 400, new Cutoff.CellVoltage(3.0), 0.2);
        PackEnergy young = of(pack(Cells.nmc(5)), 400, new Cutoff.CellVoltage(3.0), 0.2);
        assertThat(old.budget().usableEnergyJ())
                .isLessThan(0.8 * young.budget().usableEnergyJ())
                .isGreaterThan(0.7 * young.budget().usableEnergyJ());
        assertThat(old.discharge().startVoltageV()).isLessThan(young.discharge().startVoltageV());
    }

    @Test
    void aCellChargedToLessStartsLower() {
        Cell spared = new Cell(
                Chemistry.LI_ION,
                18_000,
                new InternalResistance.Typical(),
                OptionalDouble.empty(),
                new CellLimits(
                        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(4.0)),
                List.of());
        assertThat(PackState.of(pack(spared), ROOM).restVoltageV(0)).isCloseTo(4.0, within(1e-6));
    }

    @Test
    void anEmptyPackEndsAtOnce() {
        Pack empty = Cells.pack(new Segment(12, 4, Cells.nmc(5), 1, 0));
        PackEnergy energy = of(empty, 200, new Cutoff.CellVoltage(3.0), 0.2);
        assertThat(energy.budget().durationS()).isZero();
        assertThat(codes(energy)).contains("cutoff-at-once");
    }

    @Test
    void aCutoffBelowTheCellsMinimumIsTold() {
        Pack pouches = pack(Cell.typical(Chemistry.LIPO, 18_000));
        PackEnergy energy = of(pouches, 200, new Cutoff.PackVoltage(33), 0.2);
        assertThat(finding(energy, "cutoff-below-minimum").limit()).hasValue(36);
        assertThat(energy.budget().energyBelowCutoffJ()).isZero();
    }

    @Test
    void leadsCostVoltage() {
        Pack bare = pack(Cells.nmc(5));
        Pack leaded = new Pack(bare.segments(), 0.05);
        Cutoff cutoff = new Cutoff.PackVoltage(36);
        Discharge without = Discharge.atConstantPower(bare, 400, cutoff, ROOM);
        Discharge with = Discharge.atConstantPower(leaded, 400, cutoff, ROOM);
        assertThat(with.durationS()).isLessThan(without.durationS());
        assertThat(with.leadLossJ()).isGreaterThan(0);
    }

    @Test
    void impossibleCellsAreRefused() {
        assertThatThrownBy(() -> Cells.nmc(0)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> Cell.typical(Chemistry.CUSTOM, 1000))
                .isInstanceOf(ImpossibleValue.class)
                .hasMessageContaining("open-circuit");
        assertThatThrownBy(() -> new Pack(List.of(), 0)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Load.Profile(List.of(new PowerStep(0, 10))))
                .isInstanceOf(ImpossibleValue.class);
    }

    private static PackState drained(double charge) {
        return PackState.of(Cells.pack(new Segment(12, 4, Cells.nmc(5), 1, charge)), ROOM);
    }

    private static PackEnergy inAir(Surroundings air, double powerW) {
        return PackEnergy.of(
                new PackTask(pack(Cells.nmc(5)), new Load.Power(powerW), new Cutoff.CellVoltage(2.8), air, 0.2));
    }

    private static PackEnergy of(Pack pack, double powerW, Cutoff cutoff, double reserve) {
        return of(pack, new Load.Power(powerW), cutoff, reserve);
    }

    private static PackEnergy of(Pack pack, Load load, Cutoff cutoff, double reserve) {
        return PackEnergy.of(new PackTask(pack, load, cutoff, ROOM, reserve));
    }

    private static Pack pack(Cell cell) {
        return Cells.pack(Segment.full(12, 4, cell));
    }

    private static double all(PackEnergy energy) {
        return energy.budget().usableEnergyJ() + energy.budget().energyBelowCutoffJ();
    }

    private static List<String> codes(PackEnergy energy) {
        return energy.judgement().findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(PackEnergy energy, String code) {
        return energy.judgement().findings().stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " not in " + codes(energy)));
    }
}
