package trestle.binding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {
    private record Answer(double value) {}

    private static String written(Object value) {
        return new String(Json.bytes(value), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1",
        "123456789, 1.23456789E8",
        "123456789.4, 1.23456789E8",
        "0.12345678949, 0.123456789",
        "0.1234567895, 0.12345679",
        "-2.0000000001, -2.0"
    })
    void anAnswerHasNineDigits(double value, String text) {
        assertThat(written(List.of(value))).isEqualTo("[" + text + "]");
        assertThat(written(new Answer(value))).isEqualTo("{\"value\":" + text + "}");
    }

    @Test
    void aRequestKeepsEveryDigit() {
        assertThat(Json.exactBytes(List.of(0.12345678949)))
                .isEqualTo("[0.12345678949]".getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void anAnswerIsFinite(double value) {
        assertThatThrownBy(() -> Json.bytes(List.of(value)))
                .hasRootCauseMessage("an answer holds a number that is not finite");
    }

    @Test
    void whatCannotBeWrittenIsOurOwnFault() {
        Object endless = new Object();
        assertThatThrownBy(() -> Json.bytes(Map.of("x", endless))).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Json.exactBytes(Map.of("x", endless))).isInstanceOf(IllegalStateException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"mass_g\":\"12\",\"name\":\"a\"}",
                "{\"motor_count\":true}",
                "{\"unknown\":1}",
                "{\"name\":\"a\"} {}",
                "{\"name\":\"a\",\"name\":\"b\"}"
            })
    void theMapperTakesNothingForSomethingElse(String json) {
        assertThatThrownBy(() -> Json.MAPPER.readValue(json, Craft.class)).isInstanceOf(JsonProcessingException.class);
    }

    @Test
    void whatIsReadIsBounded() throws Exception {
        Json.MAPPER.readTree("[".repeat(32) + "]".repeat(32));
        Json.MAPPER.readTree("[" + "0,".repeat(99_000) + "0]");
        Json.MAPPER.readTree("\"" + "x".repeat(20_000) + "\"");
        for (String tooMuch : List.of(
                "[".repeat(33) + "]".repeat(33),
                "[" + "0,".repeat(100_000) + "0]",
                "\"" + "x".repeat(20_001) + "\"",
                "1" + "0".repeat(40),
                "{\"" + "n".repeat(60_000) + "\":1}")) {
            assertThatThrownBy(() -> Json.MAPPER.readTree(tooMuch)).hasMessageContaining("exceeds the maximum");
        }
    }
}
