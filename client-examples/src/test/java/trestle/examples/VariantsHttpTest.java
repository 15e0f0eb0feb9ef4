package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The example {@code variants.py} against the live service. */
class VariantsHttpTest {
    private static final int USABLE_WH = 1;
    private static final int BELOW_CUTOFF_WH = 2;

    @Test
    void aHigherCutoffLeavesMoreInThePack() {
        Command.Outcome outcome = Python.run(LiveService.url(), "variants.py");

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out()).startsWith("cutoff V/cell  usable Wh  below the cutoff Wh\n");
        assertThat(column(outcome, 0)).containsExactly(2.8, 2.9, 3.0, 3.1, 3.2, 3.3, 3.4, 3.5);
        assertThat(column(outcome, USABLE_WH))
                .isSortedAccordingTo(Collections.reverseOrder())
                .doesNotHaveDuplicates();
        assertThat(column(outcome, BELOW_CUTOFF_WH)).isSorted().doesNotHaveDuplicates();
    }

    private static List<Double> column(Command.Outcome outcome, int index) {
        return outcome.out()
                .lines()
                .skip(1)
                .map(line -> Arrays.asList(line.trim().split("\\s+")).get(index))
                .map(Double::valueOf)
                .toList();
    }
}
