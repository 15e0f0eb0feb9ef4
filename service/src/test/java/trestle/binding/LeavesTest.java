package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LeavesTest {
    private static JsonNode number(String text) {
        return Leaves.TEXT.read(TextNode.valueOf(text), Shape.Plain.NUMBER);
    }

    @ParameterizedTest
    @CsvSource({"7, 7", "-7, -7", "+7, 7", "' 7 ', 7", "7., 7", ".5, 0.5", "1e3, 1000", "1.5E-2, 0.015"})
    void aTextSpellsANumber(String text, double value) {
        assertThat(number(text).isNumber()).isTrue();
        assertThat(number(text).doubleValue()).isEqualTo(value);
    }

    @Test
    void aWholeNumberStaysWholeAndALongOneIsNot() {
        assertThat(number("999999999999999999").isIntegralNumber()).isTrue();
        assertThat(number("9999999999999999999").isIntegralNumber()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "1,5", "1e", "0x10", "NaN", "Infinity", "1 2", "--1", ".", "1e12345", "1d", "٣"})
    void allElseStaysAText(String text) {
        assertThat(number(text)).isEqualTo(TextNode.valueOf(text));
        assertThat(Leaves.TEXT.read(TextNode.valueOf(text), Shape.Plain.INTEGER).isTextual())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({"true, true", "TRUE, true", "' False', false"})
    void aSpreadsheetsTruthIsRead(String text, boolean value) {
        JsonNode read = Leaves.TEXT.read(TextNode.valueOf(text), Shape.Plain.BOOLEAN);
        assertThat(read.isBoolean()).isTrue();
        assertThat(read.booleanValue()).isEqualTo(value);
    }

    @Test
    void otherKindsAreLeftAlone() {
        TextNode seven = TextNode.valueOf(" 7");
        assertThat(Leaves.TEXT.read(seven, Shape.Plain.TEXT)).isSameAs(seven);
        assertThat(Leaves.TEXT.read(seven, new Shape.Nested(Craft.class))).isSameAs(seven);
        assertThat(Leaves.TEXT.read(TextNode.valueOf("ja"), Shape.Plain.BOOLEAN).isTextual())
                .isTrue();
        assertThat(Leaves.TEXT.read(IntNode.valueOf(1), Shape.Plain.BOOLEAN)).isEqualTo(IntNode.valueOf(1));
        assertThat(Leaves.TYPED.read(seven, Shape.Plain.NUMBER)).isSameAs(seven);
    }

    @ParameterizedTest
    @CsvSource({
        "'1,5', true",
        "' -1.000,5', true",
        "'1,5e3', true",
        "',', true",
        "'1.5', false",
        "'a,b', false",
        "'1,5e', false"
    })
    void aDecimalCommaIsSeen(String text, boolean has) {
        assertThat(Leaves.hasDecimalComma(TextNode.valueOf(text))).isEqualTo(has);
        assertThat(Leaves.hasDecimalComma(IntNode.valueOf(15))).isFalse();
    }
}
