package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Own inertia of spread things against their integrals, by hand; nothing published. */
class SpreadInertiaClosedFormTest {
    private static final double HALF_SPAN_M = 1.7;

    /** Radius of gyration of a straight taper λ over half the span, squared: (1 + 3λ)/(6 (1 + λ)) for mass as the chord. */
    @ParameterizedTest
    @CsvSource({"1, 0.3333", "0.8, 0.3148", "0.6, 0.2917", "0.5, 0.2778", "0.4, 0.2619", "0, 0.1667"})
    void aSkinnedWingIsItsIntegral(double taper, double square) {
        assertThat(rollSquare(taper, Spread.Build.SKIN)).isCloseTo(square, withPercentage(0.2));
        assertThat((1 + 3 * taper) / (6 * (1 + taper))).isCloseTo(square, within(5e-5));
    }

    /** The same for mass as the square of the chord. */
    @ParameterizedTest
    @CsvSource({"1, 0.3333", "0.8, 0.2967", "0.6, 0.2531", "0.5, 0.2286", "0.4, 0.2026", "0, 0.1000"})
    void aSolidWingIsItsIntegral(double taper, double square) {
        assertThat(rollSquare(taper, Spread.Build.SOLID)).isCloseTo(square, withPercentage(0.35));
    }

    /** 1 kg over 3.4 m: 0.9633 kg m² as a rectangle, 0.6606 at half the chord at the tip. */
    @Test
    void twoWingsOfOneKilogram() {
        assertThat(wing(1, Spread.Build.SOLID).rollKgM2()).isCloseTo(0.9633, withPercentage(0.2));
        assertThat(wing(0.5, Spread.Build.SOLID).rollKgM2()).isCloseTo(0.6606, withPercentage(0.2));
    }

    /** A rectangle is a plate: {@code m b²/12}, {@code m c²/12} and their sum. */
    @Test
    void aRectangularWingIsAPlate() {
        Inertia plate = wing(1, Spread.Build.SKIN);
        assertThat(plate.pitchKgM2()).isCloseTo(0.25 * 0.25 / 12, within(1e-12));
        assertThat(plate.yawKgM2()).isCloseTo(plate.rollKgM2() + plate.pitchKgM2(), within(1e-12));
    }

    @Test
    void aTailIsSpreadOverItsSpan() {
        Tail tail = new Tail(0.1, 0.8, 1.4, 0.9, 0);
        Inertia own = SpreadInertia.of(new Spread.OverTail(Spread.Build.SKIN), 0.3, null, tail);
        assertThat(own.rollKgM2()).isCloseTo(0.3 * 0.64 / 12, withPercentage(0.3));
    }

    @Test
    void aRodAndABlockHaveTheirClosedForms() {
        Inertia along = SpreadInertia.of(new Spread.Rod(Spread.Axis.LONGITUDINAL, 1.2, 0), 0.2, null, null);
        assertThat(along.rollKgM2()).isZero();
        assertThat(along.pitchKgM2()).isCloseTo(0.024, within(1e-12));
        assertThat(along.yawKgM2()).isCloseTo(0.024, within(1e-12));
        Inertia tube = SpreadInertia.of(new Spread.Rod(Spread.Axis.LATERAL, 1.2, 0.04), 0.2, null, null);
        assertThat(tube.pitchKgM2()).isCloseTo(0.2 * 0.02 * 0.02, within(1e-12));
        assertThat(tube.rollKgM2()).isCloseTo(0.024 + 0.2 * 0.02 * 0.02 / 2, within(1e-12));
        Inertia upright = SpreadInertia.of(new Spread.Rod(Spread.Axis.VERTICAL, 0.6, 0), 1, null, null);
        assertThat(upright.yawKgM2()).isZero();
        assertThat(upright.rollKgM2()).isCloseTo(0.03, within(1e-12));
        Inertia block = SpreadInertia.of(new Spread.Block(0.3, 0.1, 0.06), 1.2, null, null);
        assertThat(block.rollKgM2()).isCloseTo(0.1 * (0.01 + 0.0036), within(1e-12));
        assertThat(block.pitchKgM2()).isCloseTo(0.1 * (0.09 + 0.0036), within(1e-12));
        assertThat(block.yawKgM2()).isCloseTo(0.1 * (0.09 + 0.01), within(1e-12));
    }

    /** Two halves of a dumb-bell 1 m apart, and a wing on the CG: what the points alone leave out is the wing's own. */
    @Test
    void ownInertiaAddsToThatOfThePoints() {
        Wing shape = new Wing(List.of(new Panel(0.25, 0.25, HALF_SPAN_M, 0, 0)), 0.4);
        Item wing = new Item(
                "wing",
                1,
                1,
                0.5,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Optional.empty(),
                Optional.of(new Spread.OverWing(Spread.Build.SKIN)));
        List<Item> items = List.of(wing, Loads.item("nose", 1, 0), Loads.item("tail", 1, 1));
        BalanceTask task = new BalanceTask(
                items, Optional.empty(), Optional.of(shape), Optional.empty(), Optional.empty(), Optional.empty());
        Inertia inertia = MassBalance.of(task).inertia().orElseThrow();
        assertThat(inertia.rollKgM2()).isCloseTo(wing(1, Spread.Build.SKIN).rollKgM2(), within(1e-12));
        assertThat(inertia.pitchKgM2()).isCloseTo(0.5 + 0.25 * 0.25 / 12, within(1e-12));
    }

    private static double rollSquare(double taper, Spread.Build build) {
        return wing(taper, build).rollKgM2() / (HALF_SPAN_M * HALF_SPAN_M);
    }

    /** 1 kg of straight taper from 250 mm. */
    private static Inertia wing(double taper, Spread.Build build) {
        Wing wing = new Wing(List.of(new Panel(0.25, 0.25 * taper, HALF_SPAN_M, 0, 0)), 0.4);
        return SpreadInertia.of(new Spread.OverWing(build), 1, wing, null);
    }
}
