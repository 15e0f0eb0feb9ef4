package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bad input, each kind once: a problem that points at the field, never a 500. */
class ProblemHttpTest {
    private static final String GOOD_ITEM = "{\"name\":\"spar\",\"mass_g\":200,\"arm_mm\":500}";

    private static ValidatableResponse post(String body) {
        return LiveService.unlawful()
                .body(body)
                .post("/v1/mass-balance")
                .then()
                .contentType(startsWith("application/problem+json"))
                .body("title", notNullValue());
    }

    private static ValidatableResponse postItem(String item) {
        return post("{\"items\":[" + GOOD_ITEM + "," + item + "]}");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"name\":\"a\",\"mass_g\":-40,\"arm_mm\":1}|/items/1/mass_g|below_minimum|mass_g"
                        + " is -40 g: it must be at least 0.1 g",
                "{\"name\":\"a\",\"mass_g\":0,\"arm_mm\":1}|/items/1/mass_g|below_minimum|mass_g is"
                        + " 0 g: it must be at least 0.1 g",
                "{\"name\":\"a\",\"mass_g\":1e9,\"arm_mm\":1}|/items/1/mass_g|above_maximum|mass_g"
                        + " is 1000000000 g: it must be at most 60000 g",
                "{\"name\":\"a\",\"mass_g\":1e400,\"arm_mm\":1}|/items/1/mass_g|not_finite|mass_g"
                        + " is beyond any number that can be computed with",
                "{\"name\":\"a\",\"mass_g\":\"NaN\",\"arm_mm\":1}|/items/1/mass_g|wrong_type|mass_g must be a number in g, not the text \"NaN\"",
                "{\"name\":\"a\",\"mass_g\":\"12\",\"arm_mm\":1}|/items/1/mass_g|wrong_type|mass_g must be a number in g, not the text \"12\"",
                "{\"name\":\"a\",\"mass_g\":true,\"arm_mm\":1}|/items/1/mass_g|wrong_type|mass_g must be a number in g, not true",
                "{\"name\":\"a\",\"mass_g\":[1],\"arm_mm\":1}|/items/1/mass_g|wrong_type|mass_g must be a number in g, not a list",
                "{\"name\":\"a\",\"mass_g\":{},\"arm_mm\":1}|/items/1/mass_g|wrong_type|mass_g must be a number in g, not an object",
                "{\"name\":7,\"mass_g\":1,\"arm_mm\":1}|/items/1/name|wrong_type|name must be text, not 7",
                "{\"name\":\"\",\"mass_g\":1,\"arm_mm\":1}|/items/1/name|wrong_size|name has 0"
                        + " characters: it must have 1 to 80",
                "{\"name\":\"a\",\"mass_g\":1}|/items/1/arm_mm|missing|arm_mm is missing",
                "{\"name\":\"a\",\"mass_g\":1,\"arm_mm\":null}|/items/1/arm_mm|missing|arm_mm is" + " missing",
                "{\"name\":\"a\",\"mass_g\":1,\"arm_mm\":1,\"quantity\":1.5}|/items/1/quantity|wrong_type|quantity must be a whole number, not 1.5",
                "{\"name\":\"a\",\"mass_g\":1,\"arm_mm\":1,\"quantity\":9999999999}|/items/1/quantity|wrong_type|quantity must be a whole number, not 9999999999",
                "{\"name\":\"a\",\"mass_g\":1,\"arm_mm\":1,\"mas_tolerance_g\":1}|/items/1/mas_tolerance_g|unknown_field|mas_tolerance_g"
                        + " is not a field here; did you mean mass_tolerance_g?",
                "null|/items/1|wrong_type|items[1] must be a value, not null",
                "5|/items/1|wrong_type|items[1] must be an object, not 5",
            })
    void aWrongFieldIsNamedWithWhatWouldBeRight(String item, String at, String code, String message) {
        postItem(item)
                .statusCode(400)
                .body("type", equalTo("/problems/invalid-request"))
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo(at))
                .body("errors[0].code", equalTo(code))
                .body("errors[0].message", equalTo(message));
    }

    @Test
    void allFaultsComeAtOnce() {
        post("{\"items\":[{\"name\":\"a\",\"mass_g\":-1,\"arm_mm\":\"x\",\"colour\":3}],\"wing\":{\"panels\":[]}}")
                .statusCode(400)
                .body(
                        "errors.at",
                        hasItems(
                                "/items/0/mass_g",
                                "/items/0/arm_mm",
                                "/items/0/colour",
                                "/wing/panels",
                                "/wing/root_leading_edge_arm_mm"))
                .body("errors", hasSize(5));
    }

    @Test
    void anEmptyListIsRefused() {
        post("{\"items\":[]}")
                .statusCode(400)
                .body("errors[0].at", equalTo("/items"))
                .body("errors[0].message", equalTo("items has 0 entries: it must have 1 to 500"));
    }

    @Test
    void fieldsThatExcludeEachOtherAreBothNamed() {
        post("{\"items\":[" + GOOD_ITEM + "],\"target_arm_mm\":500,\"target_percent_mac\":30}")
                .statusCode(422)
                .body("type", equalTo("/problems/impossible-request"))
                .body("errors.at", hasItems("/target_arm_mm", "/target_percent_mac", "/wing"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "{\"items\":[}",
                "nul",
                "{\"items\":[],\"items\":[]}",
                "{} {}",
                "{\"items\":NaN}",
                "\u0000",
                "{'items':[]}"
            })
    void aBodyThatIsNoJsonIsRefused(String body) {
        post(body)
                .statusCode(400)
                .body("type", equalTo("/problems/malformed-body"))
                .body("detail", not(containsString("com.fasterxml")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "3", "\"x\"", "true"})
    void aBodyThatIsNoObjectIsRefused(String body) {
        post(body).statusCode(400).body("errors[0].at", equalTo(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"items\": 3,}|column 13: Unexpected character '}': was expecting double-quote to start field name",
                "{\"items\": 3 \"wing\": 4}|column 13: Unexpected character '\"': was expecting"
                        + " comma to separate Object entries",
                "{\"items\": 3|column 12: Unexpected end-of-input: expected close marker for" + " Object",
                "{\"items\": NaN}|column 14: Non-standard token 'NaN': JSON has no such number",
                "{\"items\": 3} 4|column 14: something follows after the end of the object",
                "{\"items\": 3, \"items\": 4}|column 21: Duplicate field 'items'"
            })
    void aBodyThatIsNoJsonIsToldWhereAndWhy(String body, String detail) {
        post(body).statusCode(400).body("detail", equalTo(detail));
    }

    @Test
    void deepNestingIsRefused() {
        post("{\"items\":" + "[".repeat(5000) + "]".repeat(5000) + "}")
                .statusCode(400)
                .body("detail", containsString("nesting depth is more than the 32 that are read"));
    }

    /** Its tree would be many times its size, and sixty-four may be read at once. */
    @Test
    void aBodyOfNothingButCommasIsRefused() {
        post("{\"items\":[" + "1,".repeat(200_000) + "1]}")
                .statusCode(400)
                .body("detail", containsString("more than the 100000 that are read"));
    }

    /** Announced only: a client that went on sending would see the connection end instead. */
    @Test
    void aHugeBodyIsRefused() throws IOException {
        URI address = URI.create(LiveService.address());
        String head = "POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Content-Length: 2000000\r\n\r\n";
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            byte[] answer = new byte[2000];
            int length = socket.getInputStream().readNBytes(answer, 0, 12);
            length += socket.getInputStream().read(answer, length, answer.length - length);
            String text = new String(answer, 0, length, StandardCharsets.UTF_8);
            assertThat(text).startsWith("HTTP/1.1 413").contains("application/problem+json");
        }
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        LiveService.unchecked()
                .body(new byte[] {'{', '"', (byte) 0xff, (byte) 0xfe, '"', ':', '1', '}'})
                .post("/v1/mass-balance")
                .then()
                .statusCode(400)
                .contentType(startsWith("application/problem+json"));
    }

    @Test
    void anotherMediaTypeIsRefusedWithAHint() {
        LiveService.unlawful()
                .contentType("application/x-www-form-urlencoded")
                .body("{}")
                .post("/v1/mass-balance")
                .then()
                .statusCode(415)
                .body("detail", containsString("Content-Type: application/json"));
    }

    @Test
    void anAnswerThatNobodyTakesIsNotMade() {
        LiveService.unlawful()
                .accept("image/png")
                .body("{\"items\":[" + GOOD_ITEM + "]}")
                .post("/v1/mass-balance")
                .then()
                .statusCode(406);
    }

    @Test
    void anUnknownPathIsAProblem() {
        LiveService.unchecked()
                .get("/v1/no-such-thing")
                .then()
                .statusCode(404)
                .contentType(startsWith("application/problem+json"))
                .body("type", equalTo("/problems/not-found"));
    }

    @Test
    void anotherMethodNamesTheOnesThatAreAllowed() {
        LiveService.unchecked()
                .delete("/v1/mass-balance")
                .then()
                .statusCode(405)
                .contentType(startsWith("application/problem+json"))
                .header("Allow", containsString("POST"));
    }

    @Test
    void explicitNullMeansAbsent() {
        LiveService.unlawful()
                .body("{\"items\":[{\"name\":\"a\",\"mass_g\":5,\"arm_mm\":1,\"lateral_mm\":null}],\"wing\":null}")
                .post("/v1/mass-balance")
                .then()
                .statusCode(200);
    }

    @Test
    void anUnknownWordIsToldTheKnownOnes() {
        LiveService.unlawful()
                .body("{\"current_a\":1,\"length_mm\":1,\"supply_voltage_v\":1,\"gauge_system\":\"swg\"}")
                .post("/v1/wire-sizing")
                .then()
                .statusCode(400)
                .body("errors[0].message", equalTo("gauge_system must be one of awg, metric, not the text \"swg\""));
    }
}
