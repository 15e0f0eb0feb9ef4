package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FieldPathTest {
    @Test
    void aDottedNameIsAPointer() {
        FieldPath path = FieldPath.ofDotted("spars.0.length_mm");
        assertThat(path.steps()).containsExactly("spars", "0", "length_mm");
        assertThat(path.pointer()).isEqualTo("/spars/0/length_mm");
        assertThat(path.dotted()).isEqualTo("spars.0.length_mm");
    }

    /** The examples of RFC 6901, section 5. */
    @Test
    void aPointerHasItsOwnEscapes() {
        assertThat(FieldPath.ofPointer("/a~1b").steps()).containsExactly("a/b");
        assertThat(FieldPath.ofPointer("/m~0n").steps()).containsExactly("m~n");
        assertThat(FieldPath.ofPointer("/c%d").steps()).containsExactly("c%d");
        assertThat(FieldPath.ofPointer("/").steps()).containsExactly("");
        assertThat(FieldPath.ofPointer("").steps()).isEmpty();
        assertThat(FieldPath.ofPointer("/~01").steps()).containsExactly("~1");
        assertThat(FieldPath.escaped("a/~b")).isEqualTo("a~1~0b");
    }

    @Test
    void emptyPartsAreKept() {
        assertThat(FieldPath.ofDotted(".a.").steps()).containsExactly("", "a", "");
        assertThat(FieldPath.ofPointer("/a/").steps()).containsExactly("a", "");
    }

    @Property
    void aPointerReadsBackAsItWasWritten(@ForAll @NotEmpty List<String> steps) {
        assertThat(FieldPath.ofPointer(new FieldPath(steps).pointer()).steps()).isEqualTo(steps);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "7", "10", "123456789", "999999999"})
    void anIndexHasNoSignAndNoLeadingZero(String step) {
        assertThat(FieldPath.isIndex(step)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "00", "01", "-1", "+1", "1.", "x", "1234567890"})
    void allElseIsAName(String step) {
        assertThat(FieldPath.isIndex(step)).isFalse();
    }
}
