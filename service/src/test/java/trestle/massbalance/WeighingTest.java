package trestle.massbalance;

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

class WeighingTest {
    private static final List<Item> LIST = List.of(Loads.item("airframe", 4, 0.5), Loads.item("tail", 1, 1.0));

    @Test
    void tareIsTakenOff() {
        Weighing weighing = new Weighing(List.of(
                new Support("nose", 1.3, 0.3, 0.2, OptionalDouble.empty(), 0, 0),
                new Support("mains", 4.2, 0.2, 0.7, OptionalDouble.empty(), 0, 0)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        assertThat(balance.weighed().orElseThrow().massKg()).isCloseTo(5, within(1e-12));
        assertThat(balance.weighed().get().armM().getAsDouble()).isCloseTo(0.6, within(1e-12));
        assertThat(balance.judgement().findings()).isEmpty();
    }

    @Test
    void scalesWithinTheirToleranceAgree() {
        Support nose = new Support("nose", 1.004, 0, 0.2, OptionalDouble.empty(), 0.005, 0.002);
        Support mains = new Support("mains", 4, 0, 0.7, OptionalDouble.empty(), 0.005, 0.002);
        Weighing weighing = new Weighing(List.of(nose, mains));
        Weighed weighed = MassBalance.of(Loads.task(LIST, weighing)).weighed().orElseThrow();
        assertThat(weighed.massToleranceKg()).isCloseTo(Math.hypot(0.005, 0.005), within(1e-12));
        // By hand, mm: readings 0.3994 and 0.1002, places 0.4013 and 1.5987.
        assertThat(weighed.armToleranceM()).isCloseTo(0.001699, within(5e-7));
        assertThat(MassBalance.of(Loads.task(LIST, weighing)).judgement().findings())
                .isEmpty();
    }

    @Test
    void aForgottenItemIsNamedBySizeAndArm() {
        Weighing weighing = new Weighing(List.of(Loads.support("nose", 1.1, 0.2), Loads.support("mains", 4.1, 0.7)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        // 5.2 kg, 3.09 kg m; the list has 5 kg, 3.0 kg m: 0.2 kg with 0.09 kg m.
        MissingItem missing = balance.weighed().orElseThrow().missing().orElseThrow();
        assertThat(missing.massKg()).isCloseTo(0.2, within(1e-9));
        assertThat(missing.armM()).isCloseTo(0.45, within(1e-9));
        assertThat(balance.judgement().findings()).hasSize(1);
        assertThat(balance.judgement().findings().get(0).code()).isEqualTo("weighing-differs-in-mass");
        assertThat(balance.judgement().findings().get(0).message())
                .contains(
                        "the scales' figures are used; an item of 200 g at 450 mm that the list lacks would explain it");
    }

    @Test
    void aListThatHoldsTooMuchSaysSo() {
        Weighing weighing = new Weighing(List.of(Loads.support("nose", 1, 0.2), Loads.support("mains", 3.7, 0.7)));
        assertThat(MassBalance.of(Loads.task(LIST, weighing))
                        .judgement()
                        .findings()
                        .get(0)
                        .message())
                .contains("an item of 300 g at 700 mm too many in the list");
    }

    @Test
    void aWrongArmIsToldFromAWrongMass() {
        Weighing weighing = new Weighing(List.of(Loads.support("nose", 1.2, 0.2), Loads.support("mains", 3.8, 0.7)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        assertThat(balance.weighed().orElseThrow().missing()).isEmpty();
        assertThat(balance.judgement().findings()).extracting(Finding::code).containsExactly("weighing-differs-in-arm");
        assertThat(balance.judgement().findings().get(0).message()).contains("20 mm forward of");
    }

    @Test
    void aSupportThatCarriesNothingVoidsTheWeighing() {
        Weighing weighing = new Weighing(List.of(
                new Support("nose", 0.3, 0.4, 0.2, OptionalDouble.empty(), 0, 0), Loads.support("mains", 5, 0.7)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        assertThat(balance.weighed()).isEmpty();
        assertThat(balance.judgement().findings()).extracting(Finding::code).containsExactly("support-not-loaded");
        assertThat(balance.judgement().findings().get(0).subject()).isEqualTo(Subject.of(BalancePart.SUPPORT, 0));
    }

    @Test
    void supportsAtOneArmTellTheMassOnly() {
        Weighing weighing = new Weighing(List.of(Loads.support("right", 2.5, 0.6), Loads.support("left", 2.5, 0.6)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        Weighed weighed = balance.weighed().orElseThrow();
        assertThat(weighed.massKg()).isEqualTo(5);
        assertThat(weighed.armM()).isEmpty();
        assertThat(weighed.differenceFromItemsM()).isEmpty();
        assertThat(balance.judgement().findings()).extracting(Finding::code).containsExactly("supports-at-one-arm");
    }

    @Test
    void supportsInOneLineTellNoLateralPlace() {
        Weighing weighing = new Weighing(List.of(
                Loads.support("one", 1, 0.4, -0.1),
                Loads.support("two", 3, 0.6, 0),
                Loads.support("three", 1, 0.8, 0.1)));
        Balance balance = MassBalance.of(Loads.task(LIST, weighing));
        assertThat(balance.weighed().orElseThrow().armM()).isPresent();
        assertThat(balance.weighed().get().lateralM()).isEmpty();
        assertThat(balance.judgement().findings()).extracting(Finding::code).containsExactly("supports-in-line");
    }

    @Test
    void threeSupportsTellTheLateralPlaceOnceAllArePlaced() {
        Support nose = Loads.support("nose", 1, 0.2, 0);
        Support right = Loads.support("right", 2.1, 0.7, 0.4);
        Weighing placed = new Weighing(List.of(nose, right, Loads.support("left", 1.9, 0.7, -0.4)));
        assertThat(MassBalance.of(Loads.task(LIST, placed))
                        .weighed()
                        .orElseThrow()
                        .lateralM())
                .hasValueCloseTo(0.016, within(1e-12));
        Weighing unplaced = new Weighing(List.of(nose, right, Loads.support("left", 1.9, 0.7)));
        Balance balance = MassBalance.of(Loads.task(LIST, unplaced));
        assertThat(balance.weighed().orElseThrow().lateralM()).isEmpty();
        assertThat(balance.judgement().findings())
                .extracting(Finding::subject)
                .containsExactly(Subject.of(BalancePart.SUPPORT_LATERAL, 2));
    }

    /** 9 kg on the scales against 5 kg in the list: mass, CG, wing loading, margin and moves go by the scales. */
    @Test
    void whatWasWeighedIsWhatFlies() {
        Weighing weighing = new Weighing(List.of(Loads.support("nose", 4.5, 0.3), Loads.support("mains", 4.5, 0.5)));
        List<Item> items = List.of(Loads.movable("airframe", 4, 0.5, 0.2, 0.8), Loads.item("tail", 1, 1.0));
        BalanceTask task = new BalanceTask(
                items,
                Optional.of(weighing),
                Optional.of(new Wing(List.of(new Panel(0.3, 0.3, 1.5, 0, 0)), 0.3)),
                Optional.of(new Tail(0.12, 0.7, 1.4, 0.9, -0.02)),
                Optional.empty(),
                Optional.of(new Station.AtArm(0.41)));
        Balance balance = MassBalance.of(task);
        assertThat(balance.centre().massKg()).isEqualTo(9);
        assertThat(balance.centre().armM()).isCloseTo(0.4, within(1e-12));
        assertThat(balance.list().massKg()).isEqualTo(5);
        assertThat(balance.wingLoadingKgPerM2()).hasValueCloseTo(10.0, within(1e-12));
        double neutralM = balance.neutralPoint().orElseThrow().armM();
        assertThat(balance.staticMarginFraction()).hasValueCloseTo((neutralM - 0.4) / 0.3, within(1e-12));
        assertThat(balance.aim().orElseThrow().alone().get(0).byM()).isCloseTo(9 * 0.01 / 4, within(1e-12));
        assertThat(balance.moments().stream().mapToDouble(Moment::massFraction).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(balance.judgement().findings()).extracting(Finding::code).contains("weighing-differs-in-mass");
    }

    @Test
    void limitsHoldForTheWeighedAircraft() {
        Weighing weighing = new Weighing(List.of(Loads.support("nose", 0.5, 0.2), Loads.support("mains", 4.5, 0.7)));
        BalanceTask task = new BalanceTask(
                LIST,
                Optional.of(weighing),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Limits(
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.of(new Station.AtArm(0.62)),
                        OptionalDouble.empty())),
                Optional.empty());
        assertThat(MassBalance.of(task).judgement().findings())
                .filteredOn(f -> f.severity() == Severity.STOP)
                .singleElement()
                .satisfies(f -> assertThat(f.code()).isEqualTo("cg-aft-of-limit"))
                .satisfies(f -> assertThat(f.subject()).isEqualTo(Subject.of(BalancePart.AFT_LIMIT)))
                .satisfies(f -> assertThat(f.message()).startsWith("The weighed CG at 650.0 mm"));
    }

    @Test
    void oneSupportIsRefused() {
        List<Support> one = List.of(Loads.support("all", 5, 0.6));
        assertThatThrownBy(() -> new Weighing(one)).isInstanceOf(ImpossibleValue.class);
    }
}
