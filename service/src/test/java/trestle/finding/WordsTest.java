package trestle.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a judgement is made of says something, and stays as it was made. */
class WordsTest {
    private enum Part {
        ITEM
    }

    @Test
    void aBasisSaysWhereALimitIsFrom() {
        assertThat(Basis.source("A Handbook").said()).isEqualTo("A Handbook");
        assertThat(Basis.COMMON_PRACTICE.said()).contains("no source");
        assertThatThrownBy(() -> Basis.source(null)).hasMessageContaining("said");
    }

    @Test
    void aSubjectNamesItsPartAndKeepsItsIndices() {
        List<Integer> indices = new ArrayList<>(List.of(1));
        Subject subject = new Subject(Part.ITEM, indices);
        indices.add(2);
        assertThat(subject).isEqualTo(Subject.of(Part.ITEM, 1)).isNotEqualTo(Subject.of(Part.ITEM, 1, 2));
        assertThat(Subject.of(Part.ITEM, 1, 2).indices()).containsExactly(1, 2);
        assertThatThrownBy(() -> Subject.of(null)).hasMessageContaining("part");
    }

    @Test
    void aLineOfWorkingsIsWhole() {
        Working line = new Working("V", "speed", "V = 3", 3, "m/s", "arithmetic");
        assertThat(line.about("launch")).isEqualTo(new Working("V", "launch: speed", "V = 3", 3, "m/s", "arithmetic"));
        assertThatThrownBy(() -> new Working(null, "speed", "V = 3", 3, "m/s", "a"))
                .hasMessageContaining("symbol");
        assertThatThrownBy(() -> new Working("V", null, "V = 3", 3, "m/s", "a")).hasMessageContaining("meaning");
        assertThatThrownBy(() -> new Working("V", "speed", null, 3, "m/s", "a")).hasMessageContaining("expression");
        assertThatThrownBy(() -> new Working("V", "speed", "V = 3", Double.NaN, "m/s", "a"))
                .hasMessageContaining("value");
        assertThatThrownBy(() -> new Working("V", "speed", "V = 3", 3, null, "a"))
                .hasMessageContaining("unit");
        assertThatThrownBy(() -> new Working("V", "speed", "V = 3", 3, "m/s", null))
                .hasMessageContaining("source");
    }

    @Test
    void aCheckKeepsWhatItAsksFor() {
        List<Subject> give = new ArrayList<>(List.of(Subject.of(Part.ITEM)));
        Check check = new Check(
                "mass",
                "mass",
                Subject.of(Part.ITEM),
                Outcome.NOT_JUDGED,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                Basis.COMPUTED,
                give,
                true);
        give.clear();
        assertThat(check.give()).hasSize(1);
    }
}
