package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.numeric.ImpossibleValue;

class MassBalanceTest {
    /** 4 kg at 0.5 m and 1 kg at 1.0 m: 5 kg at 0.6 m. */
    private static final List<Item> TWO = List.of(Loads.item("airframe", 4, 0.5), Loads.item("tail", 1, 1.0));

    @Test
    void massTimesArmAddsUp() {
        Balance balance = MassBalance.of(Loads.task(TWO));
        assertThat(balance.centre().massKg()).isEqualTo(5);
        assertThat(balance.centre().armM()).isCloseTo(0.6, within(1e-12));
        assertThat(balance.inertia()).isEmpty();
        assertThat(balance.judgement().findings()).isEmpty();
        assertThat(balance.judgement().assumptions())
                .extracting(a -> a.assumed())
                .contains("2 of 2 items stand at a lateral place of 0 mm");
    }

    @Test
    void piecesOfOneBatchShareTheirError() {
        Centre batch = BuildUp.centre(List.of(Loads.uncertain("cell", 12, 0.07, 0.3, 0.001, 0)));
        assertThat(batch.massKg()).isCloseTo(0.84, within(1e-12));
        assertThat(batch.massToleranceKg()).isCloseTo(0.012, within(1e-12));
        assertThat(batch.armToleranceM()).isZero();
    }

    @Test
    void aSingleItemIsAnAircraft() {
        Balance balance = MassBalance.of(Loads.task(List.of(Loads.item("glider", 3, 0.4)), new Station.AtArm(0.4)));
        assertThat(balance.centre().armM()).isCloseTo(0.4, within(1e-12));
        assertThat(balance.aim().orElseThrow().ballast()).isEmpty();
        assertThat(balance.aim().get().together()).isEmpty();
    }

    @Test
    void anEmptyListOrAMassOfNothingIsRefused() {
        List<Item> none = List.of();
        assertThatThrownBy(() -> Loads.task(none)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> Loads.item("air", 0, 1)).isInstanceOf(ImpossibleValue.class);
        assertThatThrownBy(() -> new Travel(0.5, 0.4)).isInstanceOf(ImpossibleValue.class);
    }

    @Test
    void beyondALimitIsAStop() {
        Balance balance = MassBalance.of(Loads.task(TWO, limits(4.9, 0.61, 0.7)));
        assertThat(codes(balance, Severity.STOP)).containsExactly("mass-over-limit", "cg-forward-of-limit");
        assertThat(balance.judgement().findings().get(1).message())
                .startsWith(
                        "The CG at 600.0 mm is 10 mm forward of the forward limit at 610.0 mm; to bring it to 655.0 mm, say which items");
        assertThat(codes(MassBalance.of(Loads.task(TWO, limits(5.1, 0.5, 0.59))), Severity.STOP))
                .containsExactly("cg-aft-of-limit");
    }

    @Test
    void atALimitIsInsideIt() {
        assertThat(MassBalance.of(Loads.task(TWO, limits(5, 0.6, 0.6)))
                        .judgement()
                        .findings())
                .isEmpty();
    }

    @Test
    void insideALimitByLessThanTheToleranceIsAttention() {
        List<Item> items = List.of(Loads.uncertain("airframe", 1, 4, 0.5, 0.05, 0.005), Loads.item("tail", 1, 1.0));
        Centre centre = BuildUp.centre(items);
        double tolerance = centre.armToleranceM();
        assertThat(tolerance).isCloseTo(Math.hypot(0.1 * 0.05 / 5, 4 * 0.005 / 5), within(1e-12));
        Balance near = MassBalance.of(Loads.task(items, limits(5.04, 0.4, 0.6 + 0.9 * tolerance)));
        assertThat(codes(near, Severity.ATTENTION)).containsExactly("mass-near-limit", "cg-near-aft-limit");
        Balance far = MassBalance.of(Loads.task(items, limits(5.06, 0.4, 0.6 + 1.1 * tolerance)));
        assertThat(far.judgement().findings()).isEmpty();
    }

    @Test
    void withoutATargetACgOutsideIsBroughtMidwayBetweenItsLimits() {
        List<Item> items = List.of(Loads.item("airframe", 4, 0.5), Loads.movable("pack", 1, 1.0, 0.2, 1.0));
        Balance outside = MassBalance.of(Loads.task(items, limits(6, 0.5, 0.56)));
        assertThat(outside.aim().orElseThrow().targetArmM()).isCloseTo(0.53, within(1e-12));
        assertThat(outside.aim().get().alone().get(0).toArmM()).isCloseTo(0.65, within(1e-12));
        assertThat(outside.aim().get().reachable()).isTrue();
        assertThat(MassBalance.of(Loads.task(items, limits(6, 0.5, 0.7))).aim()).isEmpty();
    }

    @Test
    void limitsThatCrossAreAStop() {
        Balance balance = MassBalance.of(Loads.task(TWO, limits(9, 0.7, 0.5)));
        assertThat(codes(balance, Severity.STOP)).contains("limits-crossed");
        assertThat(balance.aim()).isEmpty();
    }

    @Test
    void aTargetInStaticMarginNeedsANeutralPoint() {
        Balance margin = MassBalance.of(Loads.task(TWO, new Target.StaticMargin(0.1)));
        assertThat(margin.aim()).isEmpty();
        assertThat(check(margin, "cg-target").outcome()).isEqualTo(Outcome.NOT_JUDGED);
    }

    @Test
    void aLateralLimitIsCheckedWhereLateralPlacesAreKnown() {
        Limits limits =
                new Limits(OptionalDouble.empty(), Optional.empty(), Optional.empty(), OptionalDouble.of(0.005));
        Balance unknown = MassBalance.of(Loads.task(TWO, limits));
        assertThat(check(unknown, "cg-lateral").outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(check(unknown, "cg-lateral").essential()).isTrue();
        assertThat(check(unknown, "cg-lateral").give()).containsExactly(Subject.of(BalancePart.ITEMS));
        List<Item> lopsided = List.of(
                Item.of("airframe", new PointMass(4, 0.5, 0, 0)), Item.of("tip", new PointMass(0.1, 0.5, -1.2, 0)));
        assertThat(codes(MassBalance.of(Loads.task(lopsided, limits)), Severity.STOP))
                .containsExactly("cg-lateral-over-limit");
    }

    @Test
    void twoEqualPacksShareTheWay() {
        List<Item> items = List.of(
                Loads.item("airframe", 8, 0.5),
                Loads.movable("pack", 1, 0.6, 0.2, 0.9),
                Loads.movable("pack", 1, 0.6, 0.55, 0.9));
        Aim aim =
                MassBalance.of(Loads.task(items, new Station.AtArm(0.5))).aim().orElseThrow();
        // 0.2 kg m too far aft; even shares of 0.1 m, of which the second pack has only 0.05.
        assertThat(aim.together().orElseThrow().moves())
                .extracting(Move::byM)
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b))
                .containsExactly(-0.15, -0.05);
        assertThat(aim.together().get().reachesTarget()).isTrue();
        assertThat(aim.alone()).extracting(Move::reachable).containsExactly(true, false);
    }

    @Test
    void aTargetOutOfReachSaysHowFarItGets() {
        List<Item> items = List.of(Loads.item("airframe", 9, 0.5), Loads.movable("pack", 1, 0.5, 0.4, 0.6));
        Balance balance = MassBalance.of(Loads.task(items, new Station.AtArm(0.45)));
        JointMove joint = balance.aim().orElseThrow().together().orElseThrow();
        assertThat(joint.reachesTarget()).isFalse();
        assertThat(joint.cgArmM()).isCloseTo(0.49, within(1e-12));
        assertThat(codes(balance, Severity.ATTENTION)).containsExactly("target-out-of-reach");
        assertThat(balance.judgement().findings().get(0).message()).contains("only to 490.0 mm");
    }

    @Test
    void anItemOutsideItsTravelIsPointedAtAndMayStay() {
        List<Item> items = List.of(Loads.item("airframe", 9, 0.5), Loads.movable("pack", 1, 0.5, 0.6, 0.7));
        Balance balance = MassBalance.of(Loads.task(items, new Station.AtArm(0.5)));
        assertThat(balance.judgement().findings())
                .filteredOn(f -> f.code().equals("item-outside-its-travel"))
                .extracting(Finding::subject)
                .containsExactly(Subject.of(BalancePart.ITEM_TRAVEL, 1));
        assertThat(balance.aim()
                        .orElseThrow()
                        .together()
                        .orElseThrow()
                        .moves()
                        .get(0)
                        .byM())
                .isZero();
    }

    @Test
    void aStabilityMarginIsJudged() {
        assertThat(codes(conventional(0.5), Severity.STOP)).containsExactly("statically-unstable");
        double neutralM = conventional(0.5).neutralPoint().orElseThrow().armM();
        assertThat(codes(conventional(neutralM - 0.02 * 0.3), Severity.ATTENTION))
                .containsExactly("static-margin-low");
        assertThat(codes(conventional(neutralM - 0.30 * 0.3), Severity.ATTENTION))
                .containsExactly("static-margin-high");
        assertThat(codes(conventional(neutralM - 0.06 * 0.3), Severity.ATTENTION))
                .containsExactly("static-margin-uncertain");
        Balance good = conventional(neutralM - 0.12 * 0.3);
        assertThat(good.judgement().findings()).isEmpty();
        assertThat(good.staticMarginFraction().getAsDouble()).isCloseTo(0.12, within(1e-12));
        assertThat(good.wingLoadingKgPerM2().getAsDouble()).isCloseTo(5 / 0.9, within(1e-12));
    }

    @Test
    void aTargetInStaticMarginIsMet() {
        BalanceTask task = new BalanceTask(
                List.of(Loads.item("airframe", 4, 0.45), Loads.movable("pack", 1, 0.4, -1, 1)),
                Optional.empty(),
                Optional.of(wing()),
                Optional.of(tail(1.4)),
                Optional.empty(),
                Optional.of(new Target.StaticMargin(0.12)));
        Balance balance = MassBalance.of(task);
        Move move = balance.aim().orElseThrow().alone().get(0);
        assertThat(move.reachable()).isTrue();
        double cgM = (4 * 0.45 + move.toArmM()) / 5;
        assertThat((balance.neutralPoint().orElseThrow().armM() - cgM) / 0.3).isCloseTo(0.12, within(1e-9));
    }

    @Test
    void aCanardIsNotCovered() {
        BalanceTask task = new BalanceTask(
                TWO, Optional.empty(), Optional.of(wing()), Optional.of(tail(0.1)), Optional.empty(), Optional.empty());
        Balance balance = MassBalance.of(task);
        assertThat(balance.neutralPoint()).isEmpty();
        assertThat(balance.staticMarginFraction()).isEmpty();
        assertThat(codes(balance, Severity.ATTENTION)).containsExactly("canard-not-covered");
    }

    private static Check check(Balance balance, String code) {
        return balance.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static Balance conventional(double cgM) {
        return MassBalance.of(new BalanceTask(
                List.of(Loads.item("all", 5, cgM)),
                Optional.empty(),
                Optional.of(wing()),
                Optional.of(tail(1.4)),
                Optional.empty(),
                Optional.empty()));
    }

    private static Wing wing() {
        return new Wing(List.of(new Panel(0.3, 0.3, 1.5, 0, 0)), 0.3);
    }

    private static Tail tail(double armM) {
        return new Tail(0.12, 0.7, armM, 0.9, -0.02);
    }

    private static Limits limits(double massKg, double forwardM, double aftM) {
        return new Limits(
                OptionalDouble.of(massKg),
                Optional.of(new Station.AtArm(forwardM)),
                Optional.of(new Station.AtArm(aftM)),
                OptionalDouble.empty());
    }

    private static List<String> codes(Balance balance, Severity severity) {
        return balance.judgement().findings().stream()
                .filter(f -> f.severity() == severity)
                .map(Finding::code)
                .toList();
    }
}
