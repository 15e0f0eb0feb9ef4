package trestle.massbalance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.finding.Finding;
import trestle.finding.Severity;

/** Slips of the keyboard are named, and odd but real aircraft are left alone. */
class PlausibilityTest {
    /** A small foam wing, a mapping aircraft, a solar aircraft of 5.65 m, a dense one of 25 kg, one of 60 kg. */
    @ParameterizedTest
    @CsvSource({"0.9, 1.2, 0.2", "5.9, 2.8, 0.28", "6.93, 5.65, 0.305", "25, 3.2, 0.4", "60, 6, 0.5"})
    void realAircraftAreLeftAlone(double massKg, double spanM, double chordM) {
        assertThat(findings(massKg, spanM, chordM)).isEmpty();
    }

    @Test
    void theWholeSpanTypedForOneHalfIsNamed() {
        assertThat(findings(5.9, 2 * 2.8, 0.28)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("span-implausibly-long");
            assertThat(finding.severity()).isEqualTo(Severity.ATTENTION);
            assertThat(finding.message()).contains("look for the whole span typed for one half");
        });
    }

    @Test
    void kilogramsTypedForGramsAreNamed() {
        assertThat(findings(0.0059, 2.8, 0.28)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("mass-implausibly-low");
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.message()).contains("typed in kg");
        });
    }

    @Test
    void oneSlipIsNamedOnce() {
        assertThat(findings(5900, 2.8, 0.28)).extracting(Finding::code).containsExactly("mass-implausibly-high");
    }

    private static List<Finding> findings(double massKg, double spanM, double chordM) {
        Wing wing = new Wing(List.of(new Panel(chordM, chordM, spanM / 2, 0, 0)), 0.4);
        return MassBalance.of(new BalanceTask(
                        List.of(Loads.item("all", massKg, 0.4 + 0.3 * chordM)),
                        Optional.empty(),
                        Optional.of(wing),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .judgement()
                .findings();
    }
}
