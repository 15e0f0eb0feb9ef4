package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("mass_g", "arm_mm", "area_dm2");

    @Test
    void aTypingErrorIsToldTheNearestName() {
        assertThat(Nearest.to("arm_m", KNOWN, "a field here"))
                .isEqualTo("arm_m is not a field here; did you mean arm_mm?");
        assertThat(Nearest.to("mas_g", KNOWN, "in the answer"))
                .isEqualTo("mas_g is not in the answer; did you mean mass_g?");
    }

    @Test
    void aNameLikeNoneIsToldThemAll() {
        assertThat(Nearest.to("quux", KNOWN, "a field here"))
                .isEqualTo("quux is not a field here; known are mass_g, arm_mm, area_dm2");
    }

    @Test
    void aNameThatWasGivenABetterOneIsToldIt() {
        List<String> now = List.of("parallel_wires", "covering", "length_mm");
        assertThat(Nearest.to("strands_in_parallel", now, "a field here"))
                .isEqualTo("strands_in_parallel is now parallel_wires");
        assertThat(Nearest.to("insulation", now, "a field here")).isEqualTo("insulation is now covering");
        assertThat(Nearest.to("insulation", List.of("length_mm"), "a field here"))
                .isEqualTo("insulation is not a field here; known are length_mm");
    }

    @Test
    void whereNothingIsKnownThatIsSaid() {
        assertThat(Nearest.to("x", List.of(), "a field here")).isEqualTo("x is not a field here; known are none");
    }

    @Test
    void theCallersTextIsCutAfterFortyCharacters() {
        assertThat(Nearest.shortened("x".repeat(40))).isEqualTo("x".repeat(40));
        assertThat(Nearest.shortened("x".repeat(41))).isEqualTo("x".repeat(40) + "…");
        assertThat(Nearest.to("q".repeat(50), List.of(), "known")).startsWith("q".repeat(40) + "… is not known");
    }
}
