package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Examples that we worked by hand, and closed forms: arithmetic against arithmetic, nothing published. */
class MassBalanceByHandTest {

    /** MB15: 278531 / 2561 by hand. */
    @Test
    void weighingOnThreePoints() {
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

    /** MB17: 207 / 1189 by hand. */
    @Test
    void percentOfMeanChordIsThatByHand() {
        assertThat(100 * rectangle(1189, 517).macFraction(724)).isCloseTo(17.41, within(5e-3));
    }

    /** MB19, the definition. */
    @Test
    void percentOfMeanChordRunsFromLeadingToTrailingEdge() {
        Planform planform = rectangle(62, 144);
        assertThat(planform.macFraction(144)).isCloseTo(0, within(1e-12));
        assertThat(planform.macFraction(206)).isCloseTo(1, within(1e-12));
    }

    /** MB23, the closed form with taper t = ct / cr: D. Raymer, Aircraft Design (from memory). */
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

    /** MB24: 12 030 / 580 by hand. */
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
        List<Item> items = new ArrayList<>(Loads.of("balance-lesson", "MB10"));
        items.removeIf(item -> item.name().equals("more baggage"));
        Centre centre = BuildUp.centre(items);
        assertThat(centre.massKg()).isEqualTo(1646);
        assertThat(centre.armM()).isCloseTo(13.243, within(5e-4));
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
