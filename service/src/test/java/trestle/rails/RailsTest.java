package trestle.rails;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Finding;
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

    @Test
    void aFullPackAboveTheInputRatingIsAStop() {
        Finding finding = only(budget(switching(5, 25), servos(1, 0.1, 0.5)), Severity.STOP);
        assertThat(finding.code()).isEqualTo("input-over-range");
        assertThat(finding.subject()).isEqualTo(Subject.of(RailPart.INPUT_MAX, 0));
        assertThat(finding.value()).hasValue(25.2);
        assertThat(finding.limit()).hasValue(25);
        Finding near = only(budget(switching(5, 26), servos(1, 0.1, 0.5)), Severity.ATTENTION);
        assertThat(near.code()).isEqualTo("input-near-maximum");
    }

    @Test
    void aServoWithoutItsStallCurrentIsAskedFor() {
        Load servo = new Load("servo", 4, 0.2, OptionalDouble.empty(), 1, true, LoadRole.SERVO);
        Finding finding = only(budget(switching(5, 30), servo), Severity.ATTENTION);
        assertThat(finding.code()).isEqualTo("stall-current-missing");
        assertThat(finding.subject()).isEqualTo(Subject.of(RailPart.PEAK_OF_LOAD, 0, 0));
        assertThat(finding.message()).contains("0.20 A");
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
    void continuousAndPeakLoadsAreHeldAgainstTheirOwnRatings() {
        assertThat(codes(budget(switching(5, 30), servos(1, 8.1, 8.1)), Severity.ATTENTION))
                .containsExactly("load-near-rating", "regulator-heat");
        assertThat(codes(budget(switching(5, 30), servos(1, 10.1, 10.1)), Severity.STOP))
                .containsExactly("load-over-rating");
        assertThat(codes(budget(switching(5, 30), servos(8, 0.2, 2.4)), Severity.STOP))
                .isEmpty();
        assertThat(codes(budget(switching(5, 30), servos(8, 0.2, 2.6)), Severity.STOP))
                .containsExactly("peak-over-rating");
        Regulator unrated =
                new Regulator(new Conversion.Switching(0.8), 6, 10, OptionalDouble.empty(), 5, 30, Optional.empty());
        Finding peak = only(budget(unrated, servos(8, 0.2, 1.3)), Severity.STOP);
        assertThat(peak.subject()).isEqualTo(Subject.of(RailPart.MAX_CURRENT, 0));
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
    }

    @Test
    void noRailsDrawNothing() {
        RailBudget budget = Rails.of(new RailTask(SIX_CELLS, List.of()));
        assertThat(budget.systemsPowerW()).isZero();
        assertThat(budget.judgement().findings()).isEmpty();
    }

    @Test
    void contradictionsAreRefused() {
        assertThatThrownBy(() -> new Supply(20, 21)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> servos(1, 2, 1)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> switching(31, 30)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Conversion.Switching(1.1)).isInstanceOf(ImpossibleValue.class);
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

    private static List<String> codes(RailBudget budget, Severity severity) {
        return budget.judgement().findings().stream()
                .filter(f -> f.severity() == severity)
                .map(Finding::code)
                .toList();
    }
}
