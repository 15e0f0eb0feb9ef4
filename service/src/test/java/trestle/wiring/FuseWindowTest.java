package trestle.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fuses between current and wire, worked by hand from the times of ISO 8820-3 (from memory). */
class FuseWindowTest {
    private static WireRun run(double currentA, double peakA, double durationS) {
        return new WireRun(
                "lead", currentA, 0.6, 25.2, Optional.of(new CurrentPeak(peakA, durationS)), 1, List.of(), true, false);
    }

    @Test
    void aLongPeakAndTheWireBoundTheFuse() {
        FuseWindow window = FuseWindow.of(run(28, 46, 25), 72);

        assertThat(window.leastA()).isCloseTo(46 / 1.1, within(1e-9));
        assertThat(window.greatestA()).isCloseTo(72 / 1.35, within(1e-9));
        assertThat(window.recommendedA()).hasValue(50);
    }

    /** A peak that is over before a fuse can open asks less of it. */
    @ParameterizedTest
    @CsvSource({"25, 41.8182", "0.76, 41.8182", "0.75, 37.3333", "0.15, 37.3333", "0.04, 37.3333"})
    void aShortPeakAsksLess(double durationS, double leastA) {
        assertThat(FuseWindow.of(run(28, 46, durationS), 72).leastA()).isCloseTo(leastA, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"1, 90.9091", "0.5, 74.0741", "0.1, 50", "0.03, 28.5714"})
    void eachTimeHasItsShare(double durationS, double leastA) {
        assertThat(FuseWindow.of(run(10, 100, durationS), 72).leastA()).isCloseTo(leastA, within(1e-4));
    }

    @Test
    void aThinWireLeavesNoRoom() {
        assertThat(FuseWindow.of(run(28, 46, 25), 48).recommendedA()).isEmpty();
    }

    @Test
    void theWindowMayHoldNoUsualRating() {
        assertThat(new FuseWindow(61, 79).recommendedA()).isEmpty();
        assertThat(new FuseWindow(60, 79).recommendedA()).hasValue(60);
    }

    /** Full, not nominal: 29.4 V through 60 mΩ. */
    @Test
    void aShortTakesTheFullPack() {
        PlugEnd plug =
                new PlugEnd(OptionalDouble.of(29.4), OptionalDouble.of(0.06), OptionalDouble.empty(), Optional.empty());

        assertThat(plug.shortCircuitA(25.2).orElseThrow()).isCloseTo(490, within(1e-9));
    }
}
