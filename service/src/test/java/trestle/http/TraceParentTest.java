package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples are those of the recommendation, section 3.2.4. */
class TraceParentTest {
    private static final String SAMPLED = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";

    @Test
    void theTraceAndItsFlagsArePassedOnWithAStepOfOurOwn() {
        assertThat(TraceParent.of(SAMPLED).orElseThrow().passedOn("b7ad6b7169203331"))
                .isEqualTo("00-4bf92f3577b34da6a3ce929d0e0e4736-b7ad6b7169203331-01");
    }

    @Test
    void aLaterVersionMayHaveMoreAndIsPassedOnAsOurs() {
        assertThat(TraceParent.of("cc" + SAMPLED.substring(2) + "-what-the-future-brings")
                        .orElseThrow()
                        .passedOn("b7ad6b7169203331"))
                .startsWith("00-4bf92f3577b34da6a3ce929d0e0e4736-");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "00",
                "00-00000000000000000000000000000000-00f067aa0ba902b7-01",
                "00-4bf92f3577b34da6a3ce929d0e0e4736-0000000000000000-01",
                "ff-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
                "00-4BF92F3577B34DA6A3CE929D0E0E4736-00f067aa0ba902b7-01",
                "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more",
                "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-1\n",
                "0-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01"
            })
    void whatIsMalformedCountsAsAbsent(String header) {
        assertThat(TraceParent.of(header)).isEmpty();
    }

    @Test
    void whatIsAbsentIsAbsent() {
        assertThat(TraceParent.of(null)).isEmpty();
    }
}
