package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class MassBalancePropertyTest {
    private static final double NEAR_M = 1e-9;

    @Property(tries = 200)
    void cgMovesAftWhenAMassIsMovedAft(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = 0.01, max = 1) double byM) {
        Centre before = BuildUp.centre(items);
        List<Item> moved = new ArrayList<>(items);
        moved.set(0, items.get(0).movedTo(items.get(0).armM() + byM));
        Centre after = BuildUp.centre(moved);
        assertThat(after.armM()).isGreaterThan(before.armM());
        assertThat(after.armM() - before.armM())
                .isCloseTo(CgShift.byMovingM(items.get(0).totalMassKg(), byM, before.massKg()), within(NEAR_M));
    }

    @Property(tries = 200)
    void cgStaysWhenAllMassesGrowAlike(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
        Centre before = BuildUp.centre(items);
        Centre after =
                BuildUp.centre(items.stream().map(i -> changed(i, factor, 0)).toList());
        assertThat(after.massKg()).isCloseTo(factor * before.massKg(), within(1e-9));
        assertThat(after.armM()).isCloseTo(before.armM(), within(NEAR_M));
        assertThat(after.lateralM()).isCloseTo(before.lateralM(), within(NEAR_M));
        assertThat(after.verticalM()).isCloseTo(before.verticalM(), within(NEAR_M));
        assertThat(after.armToleranceM()).isCloseTo(before.armToleranceM(), within(NEAR_M));
    }

    @Property(tries = 200)
    void cgFollowsTheDatum(@ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = -5, max = 5) double byM) {
        Centre before = BuildUp.centre(items);
        List<Item> shifted = items.stream().map(i -> changed(i, 1, byM)).toList();
        Centre after = BuildUp.centre(shifted);
        assertThat(after.armM()).isCloseTo(before.armM() + byM, within(NEAR_M));
        assertThat(after.armToleranceM()).isCloseTo(before.armToleranceM(), within(NEAR_M));
        assertThat(pitchKgM2(shifted)).isCloseTo(pitchKgM2(items), within(1e-8));
    }

    /** Pitch inertia with the first item spread over a wing. */
    private static double pitchKgM2(List<Item> items) {
        List<Item> winged = new ArrayList<>(items);
        Item first = items.get(0);
        winged.set(
                0,
                new Item(
                        first.name(),
                        first.quantityCount(),
                        first.massKg(),
                        first.armM(),
                        first.lateralM(),
                        first.verticalM(),
                        0,
                        0,
                        Optional.empty(),
                        Optional.of(new Spread.OverWing(Spread.Build.SOLID))));
        Wing wing = new Wing(List.of(new Panel(0.3, 0.2, 1.4, 0.05, 0.1)), 0.4);
        BalanceTask task = new BalanceTask(
                winged, Optional.empty(), Optional.of(wing), Optional.empty(), Optional.empty(), Optional.empty());
        return BuildUp.inertia(task, BuildUp.centre(winged)).orElseThrow().pitchKgM2();
    }

    @Property(tries = 200)
    void momentsAddUpToMassTimesCg(@ForAll("aircraft") List<Item> items) {
        Balance balance = MassBalance.of(Loads.task(items));
        double momentKgM =
                balance.moments().stream().mapToDouble(Moment::momentKgM).sum();
        double share =
                balance.moments().stream().mapToDouble(Moment::massFraction).sum();
        assertThat(momentKgM)
                .isCloseTo(balance.centre().massKg() * balance.centre().armM(), within(1e-8));
        assertThat(share).isCloseTo(1, within(1e-12));
        double aboutCg = balance.moments().stream()
                .mapToDouble(m -> m.massKg() * (m.armM() - balance.centre().armM()))
                .sum();
        assertThat(aboutCg).isCloseTo(0, within(1e-8));
    }

    /** The tolerance of the CG is the first-order response to each item's own errors. */
    @Property(tries = 100)
    void toleranceIsTheRootSumOfSquaresOfSmallChanges(@ForAll("aircraft") List<Item> items) {
        Centre centre = BuildUp.centre(items);
        double scale = 1e-4;
        double sum = 0;
        double massSum = 0;
        for (int k = 0; k < items.size(); k++) {
            Item item = items.get(k);
            Item heavier = changed(item, 1 + scale * item.massToleranceKg() / item.massKg(), 0);
            Item further = item.movedTo(item.armM() + scale * item.armToleranceM());
            sum += square((armWith(items, k, heavier) - centre.armM()) / scale);
            sum += square((armWith(items, k, further) - centre.armM()) / scale);
            massSum += square(item.quantityCount() * item.massToleranceKg());
        }
        assertThat(centre.armToleranceM()).isCloseTo(Math.sqrt(sum), within(1e-5));
        assertThat(centre.massToleranceKg()).isCloseTo(Math.sqrt(massSum), within(1e-12));
    }

    @Property(tries = 200)
    void aMoveOfOneItemReachesTheTarget(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = -0.5, max = 2.5) double targetM) {
        Aim aim = aim(items, targetM);
        for (Move move : aim.alone()) {
            List<Item> moved = new ArrayList<>(items);
            moved.set(move.itemIndex(), items.get(move.itemIndex()).movedTo(move.toArmM()));
            assertThat(BuildUp.centre(moved).armM()).isCloseTo(targetM, within(NEAR_M));
            Travel travel = items.get(move.itemIndex()).travel().orElseThrow();
            assertThat(move.reachable()).isEqualTo(travel.reaches(move.toArmM()));
        }
    }

    @Property(tries = 200)
    void movingTogetherReachesTheTargetOrTheEndsOfAllTravels(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = -0.5, max = 2.5) double targetM) {
        Aim aim = aim(items, targetM);
        Assume.that(aim.together().isPresent());
        JointMove joint = aim.together().orElseThrow();
        List<Item> moved = new ArrayList<>(items);
        for (Move move : joint.moves()) {
            Item item = items.get(move.itemIndex());
            moved.set(move.itemIndex(), item.movedTo(move.toArmM()));
            assertThat(item.travel().orElseThrow().reaches(move.toArmM())).isTrue();
        }
        assertThat(BuildUp.centre(moved).armM()).isCloseTo(joint.cgArmM(), within(NEAR_M));
        if (joint.reachesTarget()) {
            assertThat(joint.cgArmM()).isCloseTo(targetM, within(2e-9));
        } else {
            boolean aft = targetM > BuildUp.centre(items).armM();
            for (Move move : joint.moves()) {
                Travel travel = items.get(move.itemIndex()).travel().orElseThrow();
                assertThat(move.toArmM()).isCloseTo(aft ? travel.toM() : travel.fromM(), within(NEAR_M));
            }
        }
        boolean oneReaches = aim.alone().stream().anyMatch(Move::reachable);
        assertThat(joint.reachesTarget() || !oneReaches).isTrue();
    }

    /** No exchange of moment between two items that both can still move makes the squares less. */
    @Property(tries = 200)
    void movingTogetherTakesTheLeastSumOfSquares(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = -0.5, max = 2.5) double targetM) {
        Aim aim = aim(items, targetM);
        Assume.that(aim.together().isPresent());
        List<Move> moves = aim.together().orElseThrow().moves();
        double squares = moves.stream().mapToDouble(m -> square(m.byM())).sum();
        double momentKgM = 1e-4;
        for (Move more : moves) {
            for (Move less : moves) {
                Item giver = items.get(less.itemIndex());
                Item taker = items.get(more.itemIndex());
                double takes = more.byM() + momentKgM / taker.totalMassKg();
                double gives = less.byM() - momentKgM / giver.totalMassKg();
                if (more != less
                        && taker.travel().orElseThrow().reaches(taker.armM() + takes)
                        && giver.travel().orElseThrow().reaches(giver.armM() + gives)) {
                    double exchanged =
                            squares - square(more.byM()) - square(less.byM()) + square(takes) + square(gives);
                    assertThat(exchanged).isGreaterThanOrEqualTo(squares - 1e-12);
                }
            }
        }
    }

    @Property(tries = 200)
    void ballastReachesTheTarget(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = -0.5, max = 2.5) double targetM) {
        for (Ballast ballast : aim(items, targetM).ballast()) {
            List<Item> laden = new ArrayList<>(items);
            laden.add(Loads.item("ballast", ballast.massKg(), ballast.armM()));
            Centre centre = BuildUp.centre(laden);
            assertThat(ballast.massKg()).isPositive();
            assertThat(centre.armM()).isCloseTo(targetM, within(NEAR_M));
            assertThat(centre.massKg()).isCloseTo(ballast.totalMassKg(), within(1e-9));
        }
    }

    /** A target between the outermost items and off the CG is reached by ballast, where that is not too much of it. */
    @Property(tries = 200)
    void ballastIsOfferedWhereItCanHelp(
            @ForAll("aircraft") List<Item> items, @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
        double forwardM = items.stream().mapToDouble(Item::armM).min().orElseThrow();
        double aftM = items.stream().mapToDouble(Item::armM).max().orElseThrow();
        double targetM = forwardM + share * (aftM - forwardM);
        Centre centre = BuildUp.centre(items);
        Assume.that(Math.abs(centre.armM() - targetM) > 1e-6 && aftM - forwardM > 1e-2);
        double endM = targetM > centre.armM() ? aftM : forwardM;
        double neededKg = CgShift.ballastKg(centre.massKg(), centre.armM(), targetM, endM);
        boolean little = neededKg <= 0.25 * centre.massKg();
        assertThat(aim(items, targetM).ballast()).hasSize(little ? 1 : 0);
    }

    @Property(tries = 200)
    void scalesUnderThePlaceOfItemsAgreeWithTheList(@ForAll("aircraft") List<Item> items) {
        Centre centre = BuildUp.centre(items);
        double noseM = centre.armM() - 0.3;
        double mainsM = centre.armM() + 0.1;
        double halfTrackM = 2;
        double noseKg = centre.massKg() * 0.1 / 0.4;
        double mainsKg = centre.massKg() - noseKg;
        double rightKg = mainsKg / 2 + centre.massKg() * centre.lateralM() / (2 * halfTrackM);
        Weighing weighing = new Weighing(List.of(
                Loads.support("nose", noseKg, noseM, 0),
                Loads.support("right", rightKg, mainsM, halfTrackM),
                Loads.support("left", mainsKg - rightKg, mainsM, -halfTrackM)));
        Balance balance = MassBalance.of(Loads.task(items, weighing));
        Weighed weighed = balance.weighed().orElseThrow();
        assertThat(weighed.massKg()).isCloseTo(centre.massKg(), within(1e-9));
        assertThat(weighed.armM().getAsDouble()).isCloseTo(centre.armM(), within(1e-9));
        assertThat(weighed.lateralM().getAsDouble()).isCloseTo(centre.lateralM(), within(1e-9));
        assertThat(weighed.missing()).isEmpty();
    }

    @Property(tries = 200)
    void theMissingItemMakesListAndScalesAgree(
            @ForAll("aircraft") List<Item> items,
            @ForAll @DoubleRange(min = 5, max = 20) double missingKg,
            @ForAll @DoubleRange(min = -0.5, max = 2) double missingM) {
        List<Item> whole = new ArrayList<>(items);
        whole.add(Loads.item("forgotten", missingKg, missingM));
        Centre truth = BuildUp.centre(whole);
        Weighing weighing = new Weighing(List.of(
                Loads.support("fore", truth.massKg() / 2, truth.armM() - 0.4),
                Loads.support("aft", truth.massKg() / 2, truth.armM() + 0.4)));
        Weighed weighed = MassBalance.of(Loads.task(items, weighing)).weighed().orElseThrow();
        MissingItem missing = weighed.missing().orElseThrow();
        assertThat(missing.massKg()).isCloseTo(missingKg, within(1e-8));
        assertThat(missing.armM()).isCloseTo(missingM, within(1e-8));
    }

    private static Aim aim(List<Item> items, double targetM) {
        return MassBalance.of(Loads.task(items, new Station.AtArm(targetM)))
                .aim()
                .orElseThrow();
    }

    private static double armWith(List<Item> items, int index, Item other) {
        List<Item> changed = new ArrayList<>(items);
        changed.set(index, other);
        return BuildUp.centre(changed).armM();
    }

    private static Item changed(Item item, double factor, double byM) {
        return new Item(
                item.name(),
                item.quantityCount(),
                factor * item.massKg(),
                item.armM() + byM,
                item.lateralM(),
                item.verticalM(),
                factor * item.massToleranceKg(),
                item.armToleranceM(),
                item.travel());
    }

    private static double square(double value) {
        return value * value;
    }

    @Provide
    static Arbitrary<List<Item>> aircraft() {
        Arbitrary<Double> mass = Arbitraries.doubles().between(0.005, 6).ofScale(4);
        Arbitrary<Double> arm = Arbitraries.doubles().between(-0.5, 2.5).ofScale(4);
        Arbitrary<Double> side = Arbitraries.doubles().between(-0.4, 0.4).ofScale(4);
        Arbitrary<Double> reach = Arbitraries.doubles().between(0, 0.4).ofScale(4);
        Arbitrary<Integer> quantity = Arbitraries.integers().between(1, 4);
        Arbitrary<Boolean> movable = Arbitraries.of(true, false);
        return Combinators.combine(quantity, mass, arm, side, side, reach, reach, movable)
                .as((q, m, x, y, z, ahead, behind, moves) -> new Item(
                        "part",
                        q,
                        m,
                        x,
                        OptionalDouble.of(y),
                        OptionalDouble.of(z),
                        0.02 * m,
                        0.003,
                        moves ? Optional.of(new Travel(x - ahead, x + behind)) : Optional.empty()))
                .list()
                .ofMinSize(2)
                .ofMaxSize(8);
    }
}
