package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PathCheckTest {
    /** A part of which the contract says nothing more. */
    private record Open(@JsonProperty("any") Object any) {}

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/name",
                "/covering",
                "/motor_count",
                "/wing/area_dm2",
                "/wing/winglet/winglet/area_dm2",
                "/spars/17/length_mm",
                "/stations_mm/0"
            })
    void aValueMayBeThere(String pointer) {
        assertThat(PathCheck.objection(FieldPath.ofPointer(pointer), Craft.class, "a field here"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/nam|nam is not a field here; did you mean name?",
                "/wing/x|x is not a field here; known are area_dm2, winglet",
                "/spars/x/length_mm|x is no index of a list; they count from 0",
                "/name/x|a value has no parts, and so no x",
                "/covering/0|a value has no parts, and so no 0",
                "/spars|this is a list: name one value of it by its index",
                "/wing|this is an object: name one of its values, area_dm2, winglet",
                "/spars/0|this is an object: name one of its values, length_mm"
            })
    void noValueCanBeThere(String pointer, String because) {
        assertThat(PathCheck.objection(FieldPath.ofPointer(pointer), Craft.class, "a field here"))
                .contains(because);
    }

    @Test
    void theWholeIsNoValue() {
        assertThat(PathCheck.objection(FieldPath.ofPointer(""), Craft.Spar.class, "a field here"))
                .contains("this is an object: name one of its values, length_mm");
    }

    @Test
    void ofAnOpenPartNothingIsKnown() {
        assertThat(PathCheck.objection(FieldPath.ofPointer("/any"), Open.class, "a field here"))
                .isEmpty();
        assertThat(PathCheck.objection(FieldPath.ofPointer("/any/x/0"), Open.class, "a field here"))
                .isEmpty();
    }
}
