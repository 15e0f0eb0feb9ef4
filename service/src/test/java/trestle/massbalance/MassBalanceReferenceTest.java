package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published worked examples, to the rounding of their source; pounds and inches as printed. */
class MassBalanceReferenceTest {

    /** See reference/faa-ac-43-13-1b/README.md; MB03's printed CG is corrected there. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/faa-ac-43-13-1b/totals.csv", numLinesToSkip = 1)
    void extremesOfAFourSeatAeroplaneAreReproduced(
            String example, double weight, double moment, double cg, double halfDigit) {
        Balance balance = balance("faa-ac-43-13-1b", example);
        assertTotals(balance, weight, cg, halfDigit);
        long printedMoment = balance.moments().stream()
                .mapToLong(m -> Math.round(m.momentKgM()))
                .sum();
        assertThat(printedMoment).isEqualTo((long) moment);
    }

    /** See reference/faa-phak/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/faa-phak/totals.csv", numLinesToSkip = 1)
    void handbookComputationalMethodIsReproduced(
            String example, double weight, double moment, double cg, double halfDigit) {
        Balance balance = balance("faa-phak", example);
        assertTotals(balance, weight, cg, halfDigit);
        assertThat(moment(balance)).isCloseTo(moment, within(1e-6));
    }

    /** See reference/humble-aviation/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/humble-aviation/totals.csv", numLinesToSkip = 1)
    void flyingSchoolExamplesAreReproduced(String example, double weight, double moment, double cg, double halfDigit) {
        Balance balance = balance("humble-aviation", example);
        assertTotals(balance, weight, cg, halfDigit);
        assertThat(moment(balance)).isCloseTo(moment, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/faa-phak/shifts.csv", numLinesToSkip = 1)
    void handbookWeightShiftsAreReproduced(
            String example,
            double weight,
            double cg,
            double moved,
            double from,
            double to,
            double change,
            double halfDigit) {
        assertShift(example, weight, cg, moved, from, to, change, halfDigit);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/humble-aviation/shifts.csv", numLinesToSkip = 1)
    void flyingSchoolWeightShiftIsReproduced(
            String example,
            double weight,
            double cg,
            double moved,
            double from,
            double to,
            double change,
            double halfDigit) {
        assertShift(example, weight, cg, moved, from, to, change, halfDigit);
    }

    /** MB12 nose wheel, MB13 datum ahead, MB14 tail wheel: reference/faa-h-8083-1/README.md. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/faa-h-8083-1/weighings.csv", numLinesToSkip = 1)
    void weighingsOnTwoPointsAreReproduced(
            String example, double wheel, double wheelArm, double mains, double mainsArm, double cg) {
        Weighed weighed = weighed(Loads.support("wheel", wheel, wheelArm), Loads.support("mains", mains, mainsArm));
        assertThat(weighed.armM().getAsDouble()).as(example).isCloseTo(cg, within(0.05));
    }

    /** MB15, reference/atpl-questions/README.md: answer worked out by hand. */
    @Test
    void weighingOnThreePointsIsReproduced() {
        Weighed weighed = weighed(
                Loads.support("nose", 475, 55), Loads.support("right", 1046, 121), Loads.support("left", 1040, 121));
        assertThat(weighed.massKg()).isEqualTo(2561);
        assertThat(weighed.armM().getAsDouble()).isCloseTo(108.759, within(5e-4));
        assertThat(weighed.lateralM()).isEmpty();
    }

    /** MB25, constructed from MB15: the datum moves 55 aft, to the nose wheel. */
    @Test
    void weighingFollowsAMovedDatum() {
        Weighed weighed = weighed(
                Loads.support("nose", 475, 0), Loads.support("right", 1046, 66), Loads.support("left", 1040, 66));
        assertThat(weighed.massKg()).isEqualTo(2561);
        assertThat(weighed.armM().getAsDouble()).isCloseTo(53.759, within(5e-4));
    }

    /** MB17, question bank (answer by hand), and MB18, FAA-H-8083-1A chapter 3 (from memory). */
    @Test
    void percentOfMeanChordIsReproduced() {
        assertThat(100 * rectangle(1189, 517).macFraction(724)).isCloseTo(17.41, within(5e-3));
        assertThat(100 * rectangle(62, 144).macFraction(161)).isCloseTo(27.4, within(0.05));
    }

    /** MB19, the definition: EASA ECQB 2020. */
    @Test
    void percentOfMeanChordRunsFromLeadingToTrailingEdge() {
        Planform planform = rectangle(62, 144);
        assertThat(planform.macFraction(144)).isCloseTo(0, within(1e-12));
        assertThat(planform.macFraction(206)).isCloseTo(1, within(1e-12));
    }

    /** MB21, FAA-H-8083-1B chapter 7: 7.7 lb at station 228. */
    @Test
    void permanentBallastIsReproduced() {
        assertThat(CgShift.ballastKg(1876, 32.2, 33.0, 228)).isCloseTo(7.7, within(0.05));
        // The same through the calculation: the aircraft split into two items of that CG, one of
        // which stands at the ballast's station.
        double tail = 10;
        double rest = 1876 - tail;
        double restArm = (1876 * 32.2 - tail * 228) / rest;
        Balance balance = MassBalance.of(Loads.task(
                List.of(Loads.item("rest", rest, restArm), Loads.item("tail", tail, 228)), new Station.AtArm(33.0)));
        assertThat(balance.aim().orElseThrow().ballast()).hasSize(1);
        assertThat(balance.aim().get().ballast().get(0).massKg()).isCloseTo(7.7, within(0.05));
    }

    /** MB22, PDAS mean-chord example 1, four decimals: reference/pdas-mean-chord/README.md. */
    @Test
    void meanChordOfATaperedSweptWingIsReproduced() {
        Planform planform = Planform.of(new Wing(List.of(new Panel(400, 200, 1000, 600, 0)), 0));
        assertThat(planform.meanAerodynamicChordM()).isCloseTo(311.1111, within(5e-5));
        assertThat(planform.macLateralM()).isCloseTo(444.4444, within(5e-5));
        assertThat(planform.macLeadingEdgeArmM()).isCloseTo(266.6667, within(5e-5));
        assertThat(planform.armM(1)).isCloseTo(577.7778, within(5e-5));
        assertThat(planform.quarterMacArmM()).isCloseTo(344.4444, within(5e-5));
        assertThat(planform.areaM2() / 2).isCloseTo(300_000, within(5e-5));
    }

    /** MB23, Raymer's closed form with taper t = ct / cr. */
    @Test
    void meanChordFollowsTheClosedForm() {
        for (double taper : new double[] {0, 0.25, 0.5, 0.8, 1}) {
            double root = 400;
            assertThat(MeanChord.lengthM(root, taper * root))
                    .isCloseTo(2.0 / 3 * root * (1 + taper + taper * taper) / (1 + taper), within(1e-9));
            assertThat(MeanChord.spanFraction(root, taper * root))
                    .isCloseTo((1 + 2 * taper) / (3 * (1 + taper)), within(1e-12));
        }
    }

    /**
     * MB24, constructed with the lateral arms of a light helicopter's manual (section 6-4: seats
     * +320 and −280 mm, luggage +323 mm): 12 030 / 580 by hand.
     */
    @Test
    void lateralCgIsReproduced() {
        Centre centre = BuildUp.centre(List.of(
                Item.of("empty", new PointMass(430, 0, 0, 0)),
                Item.of("right", new PointMass(80, 0, 320, 0)),
                Item.of("left", new PointMass(60, 0, -280, 0)),
                Item.of("luggage", new PointMass(10, 0, 323, 0))));
        assertThat(centre.massKg()).isEqualTo(580);
        assertThat(centre.lateralM()).isCloseTo(20.741, within(5e-4));
    }

    /** MB26, the inverse of MB10. */
    @Test
    void takingAnItemOutUndoesPuttingItIn() {
        List<Item> items = new ArrayList<>(Loads.of("humble-aviation", "MB10"));
        items.removeIf(item -> item.name().equals("more baggage"));
        Centre centre = BuildUp.centre(items);
        assertThat(centre.massKg()).isEqualTo(1646);
        assertThat(centre.armM()).isCloseTo(13.243, within(5e-4));
    }

    private static void assertTotals(Balance balance, double weight, double cg, double halfDigit) {
        assertThat(balance.centre().massKg()).isEqualTo(weight);
        assertThat(balance.centre().armM()).isCloseTo(cg, within(halfDigit));
    }

    private static void assertShift(
            String example,
            double weight,
            double cg,
            double moved,
            double from,
            double to,
            double change,
            double halfDigit) {
        assertThat(CgShift.byMovingM(moved, to - from, weight)).as(example).isCloseTo(change, within(halfDigit));
        double restArm = (weight * cg - moved * from) / (weight - moved);
        Item rest = Loads.item("rest", weight - moved, restArm);
        Item load = Loads.item("load", moved, from);
        double before = BuildUp.centre(List.of(rest, load)).armM();
        double after = BuildUp.centre(List.of(rest, load.movedTo(to))).armM();
        assertThat(after - before).as(example).isCloseTo(change, within(halfDigit));
    }

    private static Balance balance(String source, String example) {
        return MassBalance.of(Loads.task(Loads.of(source, example)));
    }

    private static double moment(Balance balance) {
        return balance.moments().stream().mapToDouble(Moment::momentKgM).sum();
    }

    private static Weighed weighed(Support... supports) {
        Weighing weighing = new Weighing(List.of(supports));
        double mass = weighing.supports().stream().mapToDouble(Support::netKg).sum();
        return MassBalance.of(Loads.task(List.of(Loads.item("all", mass, 0)), weighing))
                .weighed()
                .orElseThrow();
    }

    private static Planform rectangle(double chord, double leadingEdge) {
        Planform planform = Planform.of(new Wing(List.of(new Panel(chord, chord, 5 * chord, 0, 0)), leadingEdge));
        assertThat(planform.meanAerodynamicChordM()).isCloseTo(chord, within(1e-9));
        return planform;
    }
}
