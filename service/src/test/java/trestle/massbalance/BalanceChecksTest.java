package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Outcome;
import trestle.finding.Subject;

/** What is judged, what is not, and what would let it be. */
class BalanceChecksTest {
    private static final List<Item> ALL = List.of(Loads.item("all", 5, 0.4));
    private static final Wing WING = new Wing(List.of(new Panel(0.3, 0.3, 1.5, 0, 0)), 0.3);
    private static final TailArrangement TAIL = new Tail(0.12, 0.7, 1.4, 0.9, -0.02);

    @Test
    void theListOfChecksIsTheSameWhateverTheRequestLeavesOut() {
        List<String> bare = codes(task(ALL, Optional.empty(), Optional.empty(), Optional.empty()));
        List<String> whole = codes(new BalanceTask(
                List.of(
                        Loads.movable("pack", 2, 0.3, 0.2, 0.5),
                        Item.of("servo", new PointMass(0.1, 0.4, 0.6, 0)),
                        Loads.item("rest", 3, 0.4)),
                Optional.of(
                        new Weighing(List.of(Loads.support("nose", 3, 0.2, 0), Loads.support("mains", 2.1, 0.7, 0)))),
                Optional.of(WING),
                Optional.of(TAIL),
                Optional.of(limits(6, 0.3, 0.5, 0.01)),
                Optional.of(new Station.AtArm(0.4))));
        assertThat(bare).isEqualTo(whole).doesNotHaveDuplicates();
    }

    @Test
    void anAircraftWithoutLimitsWingOrTailIsNotJudged() {
        Balance balance = MassBalance.of(task(ALL, Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(unjudgedEssentials(balance)).containsExactly("takeoff-mass", "cg-range");
        assertThat(check(balance, "takeoff-mass").give()).containsExactly(Subject.of(BalancePart.MAXIMUM_TAKEOFF_MASS));
        assertThat(check(balance, "cg-range").give())
                .containsExactly(
                        Subject.of(BalancePart.FORWARD_LIMIT),
                        Subject.of(BalancePart.AFT_LIMIT),
                        Subject.of(BalancePart.WING),
                        Subject.of(BalancePart.TAIL));
    }

    @Test
    void aStaticMarginStandsForARange() {
        Balance balance = MassBalance.of(task(
                List.of(Loads.item("all", 5, 0.39)), Optional.of(WING), Optional.of(TAIL), Optional.of(massOnly(6))));
        assertThat(unjudgedEssentials(balance)).isEmpty();
        assertThat(balance.judgement().findings()).isEmpty();
        assertThat(check(balance, "static-margin").outcome()).isEqualTo(Outcome.PASSED);
        assertThat(check(balance, "cg-range").outcome()).isEqualTo(Outcome.NOT_JUDGED);
    }

    @Test
    void oneEndOfTheRangeIsNotARangeUnlessItIsPassed() {
        Limits aft = new Limits(
                OptionalDouble.of(6), Optional.empty(), Optional.of(new Station.AtArm(0.5)), OptionalDouble.empty());
        Balance inside = MassBalance.of(task(ALL, Optional.empty(), Optional.empty(), Optional.of(aft)));
        assertThat(unjudgedEssentials(inside)).containsExactly("cg-range");
        assertThat(check(inside, "cg-range").give()).contains(Subject.of(BalancePart.FORWARD_LIMIT));
        Balance outside = MassBalance.of(
                task(List.of(Loads.item("all", 5, 0.51)), Optional.empty(), Optional.empty(), Optional.of(aft)));
        assertThat(check(outside, "cg-range").outcome()).isEqualTo(Outcome.STOP);
        assertThat(outside.aim().orElseThrow().targetArmM()).isEqualTo(0.5);
    }

    @Test
    void theLateralCgIsEssentialOnceAnItemStandsOffTheCentreLine() {
        List<Item> lopsided =
                List.of(Loads.item("airframe", 5, 0.4), Item.of("servo", new PointMass(0.05, 0.4, 0.6, 0)));
        Limits limits = new Limits(
                OptionalDouble.of(6),
                Optional.of(new Station.AtArm(0.3)),
                Optional.of(new Station.AtArm(0.5)),
                OptionalDouble.empty());
        Balance balance = MassBalance.of(task(lopsided, Optional.empty(), Optional.empty(), Optional.of(limits)));
        assertThat(unjudgedEssentials(balance)).containsExactly("cg-lateral");
        Balance level = MassBalance.of(task(ALL, Optional.empty(), Optional.empty(), Optional.of(limits)));
        assertThat(unjudgedEssentials(level)).isEmpty();
    }

    @Test
    void aCgOutsideItsRangeSaysWhatToMoveOnce() {
        List<Item> items = List.of(Loads.item("rest", 4, 0.42), Loads.movable("forward pack", 1, 0.52, 0.2, 0.6));
        Balance balance = MassBalance.of(
                task(items, Optional.of(WING), Optional.of(TAIL), Optional.of(limits(6, 0.38, 0.42, 0.01))));
        assertThat(balance.judgement().findings())
                .extracting(Finding::code)
                .containsExactly("cg-aft-of-limit", "statically-unstable");
        assertThat(balance.judgement().findings().get(0).message())
                .isEqualTo(
                        "The CG at 440.0 mm is 20 mm aft of the aft limit at 420.0 mm; to bring it to 400.0 mm, move the"
                                + " forward pack 200 mm forward, to 320 mm.");
        assertThat(balance.judgement().findings().get(1).message()).doesNotContain("move");
    }

    @Test
    void aTargetThatIsMissedForTheSameCauseIsNotSaidAgain() {
        Balance balance = MassBalance.of(new BalanceTask(
                ALL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(limits(6, 0.3, 0.35, 0.01)),
                Optional.of(new Station.AtArm(0.33))));
        assertThat(balance.judgement().findings()).extracting(Finding::code).containsExactly("cg-aft-of-limit");
        assertThat(check(balance, "cg-target").outcome()).isEqualTo(Outcome.ATTENTION);
    }

    @Test
    void anUnstableAircraftWithoutATargetIsBroughtToTenPercent() {
        Balance balance = MassBalance.of(
                task(List.of(Loads.item("all", 5, 0.45)), Optional.of(WING), Optional.of(TAIL), Optional.empty()));
        double neutralM = balance.neutralPoint().orElseThrow().armM();
        assertThat(balance.aim().orElseThrow().targetArmM()).isEqualTo(neutralM - 0.1 * 0.3);
        assertThat(balance.judgement().assumptions())
                .anySatisfy(a -> assertThat(a.assumed()).contains("static margin of 10 %"));
    }

    @Test
    void twoNumbersThatDifferReadDifferently() {
        Balance balance = MassBalance.of(
                task(ALL, Optional.empty(), Optional.empty(), Optional.of(limits(6, 0.3, 0.39998, 0.01))));
        assertThat(balance.judgement().findings().get(0).message())
                .startsWith("The CG at 400.00 mm is 0.0 mm aft of the aft limit at 399.98 mm");
    }

    private static BalanceTask task(
            List<Item> items, Optional<Wing> wing, Optional<TailArrangement> tail, Optional<Limits> limits) {
        return new BalanceTask(items, Optional.empty(), wing, tail, limits, Optional.empty());
    }

    private static Limits massOnly(double massKg) {
        return new Limits(OptionalDouble.of(massKg), Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

    private static Limits limits(double massKg, double forwardM, double aftM, double lateralM) {
        return new Limits(
                OptionalDouble.of(massKg),
                Optional.of(new Station.AtArm(forwardM)),
                Optional.of(new Station.AtArm(aftM)),
                OptionalDouble.of(lateralM));
    }

    private static List<String> codes(BalanceTask task) {
        return MassBalance.of(task).judgement().checks().stream()
                .map(Check::code)
                .toList();
    }

    private static List<String> unjudgedEssentials(Balance balance) {
        List<String> codes = new ArrayList<>();
        for (Check check : balance.judgement().checks()) {
            if (check.essential() && check.outcome() == Outcome.NOT_JUDGED) {
                codes.add(check.code());
            }
        }
        return codes;
    }

    private static Check check(Balance balance, String code) {
        return balance.judgement().checks().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
