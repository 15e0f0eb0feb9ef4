package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Ballast stands where the aircraft has a place for it, and is no more than an aircraft bears. */
class BallastTest {
    /** 4 kg at 0.5 m and 1 kg at 1.0 m: 5 kg at 0.6 m. */
    private static final List<Item> TWO = List.of(Loads.item("airframe", 4, 0.5), Loads.item("tail", 1, 1.0));

    @Test
    void ballastThatPassesTheMassLimitIsNotProposed() {
        BalanceTask task = new BalanceTask(
                TWO,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(limits(5.5, 0.5, 0.7)),
                Optional.of(new Station.AtArm(0.585)));
        Balance balance = MassBalance.of(task);
        assertThat(balance.aim().orElseThrow().ballast())
                .singleElement()
                .satisfies(b -> assertThat(b.place()).isEqualTo("airframe"))
                .satisfies(b -> assertThat(b.armM()).isEqualTo(0.5))
                .satisfies(b -> assertThat(b.massKg()).isCloseTo(5 * 0.015 / 0.085, within(1e-9)));
        assertThat(balance.judgement().findings().get(0).message()).doesNotContain("put");
    }

    @Test
    void moreBallastThanAQuarterOfTheAircraftIsNoProposal() {
        Balance balance = MassBalance.of(Loads.task(TWO, new Station.AtArm(0.55)));
        assertThat(balance.aim().orElseThrow().ballast()).isEmpty();
    }

    @Test
    void theTailIsAPlaceForBallastAndTheLeastComesFirst() {
        BalanceTask task = new BalanceTask(
                List.of(Loads.item("nose", 1, 0.1), Loads.item("airframe", 5, 0.45)),
                Optional.empty(),
                Optional.of(wing()),
                Optional.of(tail(1.4)),
                Optional.empty(),
                Optional.of(new Station.AtArm(0.42)));
        Balance balance = MassBalance.of(task);
        assertThat(balance.aim().orElseThrow().ballast())
                .extracting(Ballast::place)
                .containsExactly("tail");
        assertThat(balance.aim().get().ballast().get(0).massKg())
                .isCloseTo((6 * 0.42 - 2.35) / (1.4 - 0.42), within(1e-12));
        BalanceTask forward = new BalanceTask(
                List.of(Loads.item("nose", 1, 0.1), Loads.item("airframe", 5, 0.45)),
                Optional.empty(),
                Optional.of(wing()),
                Optional.of(tail(1.4)),
                Optional.empty(),
                Optional.of(new Station.AtArm(0.395)));
        assertThat(MassBalance.of(forward).aim().orElseThrow().ballast())
                .extracting(Ballast::place)
                .containsExactly("tail", "airframe");
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
}
