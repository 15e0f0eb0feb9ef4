package trestle.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.numeric.ImpossibleValue;

class RailsTest {
    private static final Supply SIX_CELLS = new Supply(25.2, 18);

    @Test
    void aSwitchingRailDrawsItsOutputOverItsEfficiency() {
        RailBudget budget = budget(switching(5, 30), servos(4, 0.5, 1.5));
        RailLoad rail = budget.rails().get(0);
        assertThat(rail.typicalA()).isCloseTo(2, within(1e-12));
        assertThat(rail.peakA()).isCloseTo(6, within(1e-12));
        assertThat(rail.loadFraction()).isCloseTo(0.2, within(1e-12));
        assertThat(rail.peakLoadFraction()).isCloseTo(0.3, within(1e-12));
        assertThat(rail.inputPowerW()).isCloseTo(2 * 6 / 0.8, within(1e-12));
        assertThat(rail.heatW()).isCloseTo(3, within(1e-12));
        assertThat(rail.inputCurrentA()).isCloseTo(15.0 / 18, within(1e-12));
        assertThat(rail.inputWithinRange()).isTrue();
        assertThat(budget.systemsPowerW()).isCloseTo(15, within(1e-12));
        assertThat(budget.peakPowerW()).isCloseTo(45, within(1e-12));
    }

    /** 25.2 V full, 18 V lowest: each limit from both sides, and exactly at it. */
    @ParameterizedTest
    @CsvSource({
        "25.1, STOP, input-over-range",
        "25.2, ATTENTION, input-near-maximum",
        "26.5, ATTENTION, input-near-maximum",
        "26.6, PASSED, ",
    })
    void theFullPackIsHeldToTheMaximumInput(double inputMaxV, Outcome outcome, String code) {
        RailBudget budget = budget(switching(5, inputMaxV), servos(1, 0.1, 0.5));
        Check check = check(budget, "rail-input-maximum");
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.value()).hasValue(25.2);
        assertThat(check.essential()).isTrue();
        assertThat(check.subject()).isEqualTo(Subject.of(RailPart.INPUT_MAX, 0));
        assertThat(budget.rails().get(0).inputWithinRange()).isEqualTo(outcome != Outcome.STOP);
        assertThat(codes(budget)).isEqualTo(code == null ? List.of() : List.of(code));
    }

    @Test
    void theInputFindingsSayWhichRegulatorWould() {
        assertThat(only(budget(switching(5, 25), servos(1, 0.1, 0.5)), Severity.STOP)
                        .message())
                .isEqualTo("The full pack's 25.2 V is above the maximum input of 25.0 V of the regulator of rail: it"
                        + " will fail and may pass the pack's voltage on; use one rated for 27 V or more.");
        assertThat(only(budget(switching(5, 26), servos(1, 0.1, 0.5)), Severity.ATTENTION)
                        .message())
                .contains("within 5 % (common practice) of the maximum input of 26.0 V")
                .endsWith("use one rated for 27 V or more.");
    }

    @ParameterizedTest
    @CsvSource({"18.0, PASSED", "18.01, STOP"})
    void theLowestPackIsHeldToTheMinimumInput(double inputMinV, Outcome outcome) {
        RailBudget budget = budget(switching(inputMinV, 30), servos(1, 0.1, 0.5));
        assertThat(check(budget, "rail-input-minimum").outcome()).isEqualTo(outcome);
        assertThat(check(budget, "rail-input-minimum").essential()).isTrue();
        assertThat(budget.rails().get(0).inputWithinRange()).isEqualTo(outcome == Outcome.PASSED);
    }

    /** Rated for 10 A, and 80 % of that. */
    @ParameterizedTest
    @CsvSource({"8.0, PASSED", "8.01, ATTENTION", "10.0, ATTENTION", "10.01, STOP"})
    void theContinuousLoadIsHeldToItsRating(double typicalA, Outcome outcome) {
        RailBudget budget = budget(switching(5, 30), servos(1, typicalA, typicalA));
        Check check = check(budget, "rail-load");
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.value()).hasValue(typicalA);
        assertThat(check.limit()).hasValue(outcome == Outcome.ATTENTION ? 8 : 10);
        assertThat(check.essential()).isTrue();
    }

    @Test
    void theLoadFindingsSayWhichRegulatorWould() {
        assertThat(only(budget(switching(5, 30), servos(1, 10.5, 10.5)), Severity.STOP)
                        .message())
                .isEqualTo("Rail carries 10.50 A, 105 % of its regulator's continuous 10.00 A: use one rated for"
                        + " 13.2 A or more.");
        assertThat(codes(budget(switching(5, 30), servos(1, 8.5, 8.5)))).contains("load-near-rating");
        assertThat(budget(switching(5, 30), servos(1, 8.5, 8.5))
                        .judgement()
                        .findings()
                        .get(0)
                        .message())
                .endsWith("and 80 % (common practice) leaves room for heat: use one rated for 10.7 A or more.");
    }

    /** Rated for 20 A at the peak, or for the continuous 10 A where no other is given. */
    @ParameterizedTest
    @CsvSource({"20, true, PASSED", "20.01, true, STOP", "10, false, PASSED", "10.01, false, STOP"})
    void thePeakIsHeldToItsOwnRating(double peakA, boolean rated, Outcome outcome) {
        Regulator regulator = rated
                ? switching(5, 30)
                : new Regulator(new Conversion.Switching(0.8), 6, 10, OptionalDouble.empty(), 5, 30, Optional.empty());
        RailBudget budget = budget(regulator, servos(1, 0.1, peakA));
        Check check = check(budget, "rail-peak");
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.essential()).isTrue();
        assertThat(check.subject().part()).isEqualTo(rated ? RailPart.PEAK_CURRENT : RailPart.MAX_CURRENT);
        if (outcome == Outcome.STOP) {
            assertThat(only(budget, Severity.STOP).message())
                    .contains(rated ? "peak rating of 20.00 A" : "continuous 10.00 A");
        }
    }

    /** 25.2 V to 5.2 V: 20 V across the regulator, so 1 A is 20 W; the limits are 1.7 and 8.5 W. */
    @ParameterizedTest
    @CsvSource({
        "0.084, PASSED",
        "0.086, ATTENTION",
        "0.424, ATTENTION",
        "0.426, STOP",
        "1.2, STOP",
        "3, STOP",
        "7.9, STOP"
    })
    void aLinearRegulatorFarAboveWhatItShedsIsAStop(double typicalA, Outcome outcome) {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5.2, 10, OptionalDouble.empty(), 6, 30, Optional.empty());
        RailBudget budget = budget(linear, other(typicalA));
        Check check = check(budget, "rail-heat");
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.essential()).isTrue();
        assertThat(check.value().orElseThrow()).isCloseTo(20 * typicalA, within(1e-9));
        assertThat(budget.rails().get(0).temperatureK()).isEmpty();
    }

    @Test
    void theHeatFindingsSayWhatASwitchingOneWouldMake() {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5.2, 10, OptionalDouble.empty(), 6, 30, Optional.empty());
        // 5.2 W delivered at 85 %: 0.92 W.
        assertThat(only(budget(linear, other(1)), Severity.STOP).message())
                .isEqualTo("The linear regulator of rail makes 20.0 W of heat, and even a large heat sink sheds 8.5 W"
                        + " (common practice): use a switching one (about 0.9 W of heat).");
        assertThat(only(budget(linear, other(0.2)), Severity.ATTENTION).message())
                .isEqualTo("The regulator of rail makes 4.0 W of heat, over the 1.7 W (common practice) that a bare"
                        + " package sheds: see to its cooling, or use a switching one (about 0.2 W of heat).");
    }

    /** At 80 % and 6 V a quarter of 6 W an ampere is heat: 1.5 W/A; the limits are 1.7 and 17 W. */
    @ParameterizedTest
    @CsvSource({"1.13, PASSED", "1.14, ATTENTION", "11.3, ATTENTION", "11.4, STOP"})
    void aSwitchingRegulatorShedsMoreAndIsHeldToo(double typicalA, Outcome outcome) {
        Regulator regulator =
                new Regulator(new Conversion.Switching(0.8), 6, 100, OptionalDouble.empty(), 5, 30, Optional.empty());
        RailBudget budget = budget(regulator, other(typicalA));
        assertThat(check(budget, "rail-heat").outcome()).isEqualTo(outcome);
        budget.judgement().findings().stream()
                .filter(f -> f.code().equals("regulator-heat"))
                .forEach(f -> assertThat(f.message())
                        .endsWith(
                                outcome == Outcome.STOP
                                        ? "use a more efficient one, or give its cooling."
                                        : "see to its cooling."));
    }

    /** 40 °C and 20 K/W: 4.25 W reach 125 °C. */
    @ParameterizedTest
    @CsvSource({"0.212, PASSED", "0.213, STOP"})
    void aCooledRegulatorIsHeldToItsTemperature(double typicalA, Outcome outcome) {
        Cooling cooling = new Cooling(20, 313.15, 398.15);
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5.2, 10, OptionalDouble.empty(), 6, 30, Optional.of(cooling));
        RailBudget budget = budget(linear, other(typicalA));
        Check check = check(budget, "rail-heat");
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.unit()).isEqualTo("°C");
        assertThat(check.limit().orElseThrow()).isCloseTo(125, within(1e-9));
        assertThat(budget.rails().get(0).temperatureK().orElseThrow())
                .isCloseTo(313.15 + 20 * 20 * typicalA, within(1e-9));
        if (outcome == Outcome.STOP) {
            assertThat(only(budget, Severity.STOP).message())
                    .isEqualTo("With 4.3 W of heat the regulator of rail reaches 125.2 °C, over its maximum of 125.0"
                            + " °C: bring its thermal resistance under 20.0 K/W, or use a switching one (about 0.2 W of"
                            + " heat).");
        }
    }

    @Test
    void coolingThatCannotHelpIsNotAskedFor() {
        Cooling hot = new Cooling(20, 400, 398.15);
        Regulator switching =
                new Regulator(new Conversion.Switching(0.8), 6, 10, OptionalDouble.empty(), 5, 30, Optional.of(hot));
        assertThat(only(budget(switching, other(1)), Severity.STOP).message())
                .endsWith("bring its thermal resistance under 0.0 K/W.");
    }

    /** What looks like mA: 20 and 100 A, of the greatest load. */
    @ParameterizedTest
    @CsvSource({"20, PASSED", "20.1, ATTENTION", "100, ATTENTION", "100.1, STOP"})
    void milliamperesAreAskedFor(double peakA, Outcome outcome) {
        RailBudget budget = budget(switching(5, 30), other(0.1), servos(1, 0.1, peakA));
        assertThat(check(budget, "rail-loads-plausible").outcome()).isEqualTo(outcome);
        assertThat(check(budget(switching(5, 30), other(peakA)), "rail-loads-plausible")
                        .outcome())
                .isEqualTo(outcome);
    }

    @Test
    void aServoWithoutItsStallCurrentIsAskedFor() {
        Load servo = new Load("servo", 4, 0.2, OptionalDouble.empty(), 1, true, LoadRole.SERVO);
        Finding finding = only(budget(switching(5, 30), servo), Severity.ATTENTION);
        assertThat(finding.code()).isEqualTo("stall-current-missing");
        assertThat(finding.subject()).isEqualTo(Subject.of(RailPart.PEAK_OF_LOAD, 0, 0));
        assertThat(finding.message()).contains("0.20 A");
        assertThat(check(budget(switching(5, 30), servos(1, 0.2, 0.5)), "servo-stall-current")
                        .outcome())
                .isEqualTo(Outcome.PASSED);
        assertThat(budget(switching(5, 30), other(1)).judgement().checks())
                .noneMatch(c -> c.code().equals("servo-stall-current"));
    }

    @Test
    void aBrownOutStopsAFlightThatNeedsTheRail() {
        Finding servos = only(budget(switching(19, 30), servos(1, 0.1, 0.5)), Severity.STOP);
        assertThat(servos.code()).isEqualTo("rail-browns-out");
        Load camera = new Load("camera", 1, 0.1, OptionalDouble.empty(), 1, true, LoadRole.OTHER);
        Finding payload = only(budget(switching(19, 30), camera), Severity.ATTENTION);
        assertThat(payload.code()).isEqualTo("rail-browns-out");
    }

    @Test
    void aLinearRegulatorBrownsOutBelowItsOutputWhateverIsPrinted() {
        Regulator twenty =
                new Regulator(new Conversion.Linear(), 20, 10, OptionalDouble.empty(), 5, 30, Optional.empty());
        RailBudget budget = budget(twenty, servos(1, 0.01, 0.01));
        assertThat(budget.rails().get(0).inputWithinRange()).isFalse();
        assertThat(only(budget, Severity.STOP).limit()).hasValue(20);
    }

    @Test
    void peaksThatCannotFallTogetherAreNotAdded() {
        Load gear = new Load("gear", 1, 0.2, OptionalDouble.of(3), 0.1, false, LoadRole.OTHER);
        Load drop = new Load("drop", 1, 0.2, OptionalDouble.of(5), 0.1, false, LoadRole.OTHER);
        Load servo = new Load("servo", 1, 0.5, OptionalDouble.of(2), 1, true, LoadRole.SERVO);
        Rail rail = new Rail("rail", switching(5, 30), List.of(gear, drop, servo), false);
        assertThat(rail.peakA()).isCloseTo(0.2 + 5 + 0.5, within(1e-12));
        assertThat(rail.meanA()).isCloseTo(0.02 + 0.02 + 0.5, within(1e-12));
    }

    @Test
    void servosBesideTheFlightComputerAreAttention() {
        Load computer = new Load("computer", 1, 0.1, OptionalDouble.empty(), 1, true, LoadRole.FLIGHT_CONTROL);
        Finding finding = only(budget(switching(5, 30), servos(1, 0.1, 0.5), computer), Severity.ATTENTION);
        assertThat(finding.code()).isEqualTo("servos-share-flight-control-rail");
        assertThat(codes(budget(switching(5, 30), computer))).isEmpty();
        assertThat(codes(budget(switching(5, 30), servos(1, 0.1, 0.5)))).isEmpty();
    }

    @Test
    void aRailCarriesTheFlightByItsLoadsOrByWord() {
        Regulator regulator = switching(5, 30);
        Load receiver = new Load("receiver", 1, 0.1, OptionalDouble.empty(), 1, true, LoadRole.FLIGHT_CONTROL);
        assertThat(new Rail("a", regulator, List.of(other(1)), false).carriesTheFlight())
                .isFalse();
        assertThat(new Rail("a", regulator, List.of(other(1)), true).carriesTheFlight())
                .isTrue();
        assertThat(new Rail("a", regulator, List.of(other(1), receiver), false).carriesTheFlight())
                .isTrue();
        assertThat(budget(regulator, servos(1, 0.1, 0.5)).rails().get(0).carriesTheFlight())
                .isTrue();
        assertThat(budget(regulator, other(1)).rails().get(0).carriesTheFlight())
                .isFalse();
        Rail wanted = new Rail("a", switching(19, 30), List.of(other(0.1)), true);
        assertThat(Rails.of(new RailTask(SIX_CELLS, List.of(wanted)))
                        .judgement()
                        .findings()
                        .get(0)
                        .severity())
                .isEqualTo(Severity.STOP);
    }

    /** Each rail's checks in one order, with its own index. */
    @Test
    void everyRailHasTheSameChecks() {
        Rail first = new Rail("first", switching(5, 30), List.of(other(1)), false);
        Rail second = new Rail("second", switching(5, 20), List.of(servos(1, 0.1, 0.5)), false);
        RailBudget budget = Rails.of(new RailTask(SIX_CELLS, List.of(first, second)));
        assertThat(budget.judgement().checks())
                .extracting(Check::code)
                .containsExactly(
                        "rail-input-maximum",
                        "rail-input-minimum",
                        "rail-load",
                        "rail-peak",
                        "rail-heat",
                        "rail-loads-plausible",
                        "rail-sharing",
                        "rail-input-maximum",
                        "rail-input-minimum",
                        "rail-load",
                        "rail-peak",
                        "rail-heat",
                        "rail-loads-plausible",
                        "servo-stall-current",
                        "rail-sharing");
        assertThat(only(budget, Severity.STOP).subject()).isEqualTo(Subject.of(RailPart.INPUT_MAX, 1));
        assertThat(budget.judgement().checks().get(0).about()).isEqualTo("full pack at the input of rail first");
        assertThat(budget.systemsPowerW()).isCloseTo((6 + 0.6) / 0.8, within(1e-9));
        assertThat(budget.peakPowerW()).isCloseTo((6 + 3) / 0.8, within(1e-9));
    }

    @Test
    void whatWasChosenIsSaid() {
        assertThat(budget(switching(5, 30), other(1)).judgement().assumptions())
                .extracting(a -> a.assumed())
                .containsExactly(
                        "input currents at the pack's lowest voltage, heat and power at its full voltage",
                        "a switching regulator has one efficiency at all loads");
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5.2, 10, OptionalDouble.empty(), 6, 30, Optional.empty());
        assertThat(budget(linear, other(0.01)).judgement().assumptions()).hasSize(1);
    }

    /** By hand: a linear regulator draws what it gives, at any input. */
    @Test
    void aLinearRailDrawsWhatItGives() {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5.2, 10, OptionalDouble.of(12), 6, 30, Optional.empty());
        RailLoad rail = budget(linear, servos(2, 0.25, 1)).rails().get(0);
        assertThat(rail.inputCurrentA()).isCloseTo(0.5, within(1e-12));
        assertThat(rail.peakInputCurrentA()).isCloseTo(2, within(1e-12));
        assertThat(rail.inputPowerW()).isCloseTo(12.6, within(1e-12));
        assertThat(rail.peakInputPowerW()).isCloseTo(50.4, within(1e-12));
        assertThat(rail.heatW()).isCloseTo(10, within(1e-12));
        assertThat(rail.peakLoadFraction()).isCloseTo(2.0 / 12, within(1e-12));
        assertThat(rail.name()).isEqualTo("rail");
    }

    @Test
    void milliamperesAreTurnedIntoAmperes() {
        assertThat(budget(switching(5, 30), other(250)).judgement().findings())
                .filteredOn(f -> f.code().equals("load-implausible"))
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .isEqualTo("A load of rail takes 250 A, more than the 100 A of any (common practice): is it in"
                                + " mA? 250 mA are 0.25 A."));
    }

    @Test
    void aRailIsCalledByItsNameOnce() {
        Rail nine = new Rail("9 V", switching(5, 25), List.of(other(11)), false);
        Rail servo = new Rail("servo rail", switching(5, 25), List.of(other(11)), false);
        for (Rail rail : List.of(nine, servo)) {
            RailBudget budget = Rails.of(new RailTask(SIX_CELLS, List.of(rail)));
            String named = rail == nine ? "ail 9 V" : "ervo rail";
            assertThat(budget.judgement().findings())
                    .extracting(Finding::message)
                    .anyMatch(m -> m.contains("regulator of " + (rail == nine ? "r" : "s") + named + ": it will"))
                    .anyMatch(m -> m.startsWith((rail == nine ? "R" : "S") + named + " carries 11.00 A"));
        }
    }

    /** At an input below its output nothing is made from nothing. */
    @Test
    void heatIsNeverNegative() {
        Regulator linear =
                new Regulator(new Conversion.Linear(), 5, 10, OptionalDouble.empty(), 0, 30, Optional.empty());
        assertThat(linear.heatW(4, 1)).isZero();
        assertThat(linear.leastInputV()).isEqualTo(5);
        assertThat(switching(7, 30).leastInputV()).isEqualTo(7);
    }

    @Test
    void noRailsDrawNothing() {
        RailBudget budget = Rails.of(new RailTask(SIX_CELLS, List.of()));
        assertThat(budget.systemsPowerW()).isZero();
        assertThat(budget.judgement().findings()).isEmpty();
    }

    @Test
    void contradictionsAreRefused() {
        refused(() -> new Supply(20, 20.01));
        assertThat(new Supply(20, 20).lowestVoltageV()).isEqualTo(20);
        refused(() -> new Supply(0, 0));
        refused(() -> new Supply(20, 0));
        refused(() -> servos(1, 2, 1.99));
        assertThat(servos(1, 2, 2).allPeakA()).isEqualTo(2);
        refused(() -> servos(0, 2, 2));
        refused(() -> servos(1, -1, 2));
        refused(() -> servos(1, 1, Double.POSITIVE_INFINITY));
        refused(() -> new Load("x", 1, 1, OptionalDouble.empty(), 1.01, true, LoadRole.OTHER));
        refused(() -> new Load(null, 1, 1, OptionalDouble.empty(), 1, true, LoadRole.OTHER));
        refused(() -> new Load("x", 1, 1, OptionalDouble.empty(), 1, true, null));
        refused(() -> switching(31, 30));
        refused(() -> switching(30, 30));
        refused(() -> switching(-1, 30));
        refused(() -> switching(-2, 0));
        refused(() -> new Conversion.Switching(1.01));
        refused(() -> new Conversion.Switching(0));
        assertThat(new Conversion.Switching(1).inputPowerW(12, 5, 2)).isEqualTo(10);
        refused(() -> new Cooling(0, 300, 400));
        refused(() -> new Cooling(1, 0, 400));
        refused(() -> new Cooling(1, 300, 0));
        Conversion made = new Conversion.Switching(0.8);
        Optional<Cooling> none = Optional.empty();
        OptionalDouble unrated = OptionalDouble.empty();
        refused(() -> new Regulator(null, 6, 10, unrated, 5, 30, none));
        refused(() -> new Regulator(made, 0, 10, unrated, 5, 30, none));
        refused(() -> new Regulator(made, 6, 0, unrated, 5, 30, none));
        refused(() -> new Regulator(made, 6, 10, OptionalDouble.of(9.99), 5, 30, none));
        refused(() -> new Regulator(made, 6, 10, unrated, 5, 30, null));
        assertThat(new Regulator(made, 6, 10, OptionalDouble.of(10), 5, 30, none).peakRatingA())
                .isEqualTo(10);
        refused(() -> new Rail(null, switching(5, 30), List.of(), false));
        refused(() -> new Rail("a", null, List.of(), false));
        refused(() -> new RailTask(null, List.of()));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable made) {
        assertThatThrownBy(made).isInstanceOf(ImpossibleValue.class);
    }

    private static RailBudget budget(Regulator regulator, Load... loads) {
        Rail rail = new Rail("rail", regulator, List.of(loads), false);
        return Rails.of(new RailTask(SIX_CELLS, List.of(rail)));
    }

    private static Regulator switching(double inputMinV, double inputMaxV) {
        return new Regulator(
                new Conversion.Switching(0.8), 6, 10, OptionalDouble.of(20), inputMinV, inputMaxV, Optional.empty());
    }

    private static Load servos(int quantity, double typicalA, double peakA) {
        return new Load("servo", quantity, typicalA, OptionalDouble.of(peakA), 1, true, LoadRole.SERVO);
    }

    private static Finding only(RailBudget budget, Severity severity) {
        List<Finding> found = budget.judgement().findings().stream()
                .filter(f -> f.severity() == severity)
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<String> codes(RailBudget budget) {
        return budget.judgement().findings().stream().map(Finding::code).toList();
    }

    private static Load other(double typicalA) {
        return new Load("load", 1, typicalA, OptionalDouble.empty(), 1, true, LoadRole.OTHER);
    }

    private static Check check(RailBudget budget, String code) {
        return budget.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
