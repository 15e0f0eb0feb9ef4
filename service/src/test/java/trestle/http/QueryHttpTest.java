package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bad queries, each kind once. */
class QueryHttpTest {
    private static final String ITEM = "items.0.name=spar&items.0.mass_g=200&items.0.arm_mm=500";
    private static final String BALANCE = "/v1/mass-balance";

    private static ValidatableResponse get(String query) {
        return LiveService.unlawful()
                .urlEncodingEnabled(false)
                .get(BALANCE + "?" + query)
                .then()
                .contentType(startsWith("application/problem+json"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "items.1.mass_g=1,5|/items/1/mass_g|decimal_comma|mass_g is the text \"1,5\": write"
                        + " the decimal point as a dot and nothing between thousands, like 22.5",
                "items.1.mass_g=1.234,5|/items/1/mass_g|decimal_comma|mass_g is the text \"1.234,5\": write the"
                        + " decimal point as a dot and nothing between thousands, like 22.5",
                "items.1.mass_g=x|/items/1/mass_g|wrong_type|mass_g must be a number in g, not the text \"x\"",
                "items.1.mass_g=0x1p3|/items/1/mass_g|wrong_type|mass_g must be a number in g, not the text \"0x1p3\"",
                "items.1.mass_g=NaN|/items/1/mass_g|wrong_type|mass_g must be a number in g, not the text \"NaN\"",
                "items.1.mass_g=1e400|/items/1/mass_g|not_finite|mass_g is beyond any number that can be computed with",
                "items.1.mass_g=-40|/items/1/mass_g|below_minimum|mass_g is -40 g: it must be at least 0.1 g",
                "items.1.mass_g=4&items.1.quantity=1.5|/items/1/quantity|wrong_type|quantity must be a whole number, not 1.5",
                "items.1.mass_g=4&items.1.mass_g=4|/items/1/mass_g|repeated|items.1.mass_g is given more than once",
                "items.1.mass_g=4&items.1.mass_g.x=4|/items/1/mass_g|conflict|items.1.mass_g is"
                        + " given both a value and parts of its own",
                "items.1.mass_g.x=4&items.1.mass_g=4|/items/1/mass_g|conflict|items.1.mass_g is"
                        + " given both a value and parts of its own",
                "items.1.mass_g=4&items.1.mas_tolerance_g=1|/items/1/mas_tolerance_g|unknown_field|mas_tolerance_g"
                        + " is not a field here; did you mean mass_tolerance_g?",
                "items.1.mass_g=4&wing..span_mm=1|/wing//span_mm|not_a_name|wing..span_mm has an"
                        + " empty part: write names like wing.panels.0.span_mm",
                "items.1.mass_g=4&target_arm_mm=400&wing=7|/wing|wrong_type|wing must be an object, not the text \"7\"",
                "items.1.mass_g=4&tail.0.x=7|/tail|wrong_type|tail must be an object, not a list",
            })
    void aWrongParameterIsNamedWithWhatWouldBeRight(String more, String at, String code, String message) {
        get(ITEM + "&items.1.name=a&items.1.arm_mm=1&" + more)
                .statusCode(400)
                .body("type", equalTo("/problems/invalid-request"))
                .body("errors.find { it.code == '" + code + "' }.at", equalTo(at))
                .body("errors.find { it.code == '" + code + "' }.message", equalTo(message));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "7", "99999999"})
    void aGapInAListIsNamedAndNotClosedUp(String index) {
        get(ITEM + "&items." + index + ".name=a")
                .statusCode(400)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo("/items/1"))
                .body("errors[0].code", equalTo("index_gap"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"01", "-1", "9999999999999999999", "1e2", "x"})
    void whatIsNoIndexMakesNoList(String index) {
        get(ITEM + "&items." + index + ".name=a")
                .statusCode(400)
                .body("errors[0].at", equalTo("/items"))
                .body("errors[0].message", equalTo("items must be a list, not an object"));
    }

    @Test
    void aDeepNameIsRefused() {
        get(ITEM + "&" + "a.".repeat(5000) + "a=1").statusCode(400).body("errors[0].code", equalTo("not_a_name"));
    }

    @Test
    void anEmptyValueMeansAbsent() {
        LiveService.lawful()
                .urlEncodingEnabled(false)
                .get(BALANCE + "?" + ITEM + "&items.0.quantity=&items.1.name=&target_arm_mm=%20")
                .then()
                .statusCode(200);
    }

    @Test
    void nothingAtAllIsToldEveryMissingField() {
        get("as=json").statusCode(400).body("errors.at", hasItem("/items"));
    }

    @Test
    void allFaultsComeAtOnce() {
        get("items.0.name=a&items.0.mass_g=1,5&items.0.colour=red&wing.panels.1.span_mm=1")
                .statusCode(400)
                .body("errors.code", hasItem("decimal_comma"))
                .body("errors.code", hasItem("unknown_field"))
                .body("errors.code", hasItem("index_gap"))
                .body("errors.at", hasItem("/items/0/arm_mm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"items.0.name=%", "items.0.name=%zz", "%f=1"})
    void aBrokenEscapeIsRefused(String query) {
        // Written by hand: an HTTP library would mend it.
        assertThat(RawHttp.statusOf("GET " + BALANCE + "?" + query + " HTTP/1.1"))
                .isEqualTo(400);
    }

    @Test
    void anAddressBeyondAnyAircraftIsRefused() {
        assertThat(RawHttp.statusOf("GET " + BALANCE + "?a=" + "x".repeat(70_000) + " HTTP/1.1"))
                .isIn(414, 431);
    }

    @Test
    void aLongQueryIsStillAnswered() {
        StringBuilder query = new StringBuilder(ITEM);
        for (int i = 1; i < 500; i++) {
            query.append("&items." + i + ".name=spar " + i + "&items." + i + ".mass_g=200&items.")
                    .append(i + ".arm_mm=500");
        }
        assertThat(query.length()).isGreaterThan(25_000);
        LiveService.lawful()
                .urlEncodingEnabled(false)
                .get(BALANCE + "?" + query.toString().replace(' ', '+'))
                .then()
                .statusCode(200)
                .body("total_mass_g", equalTo(100_000f));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "as=xml|/as|as is \"xml\": it must be one of json, csv, text, svg, html",
                "as=JSON|/as|as is \"JSON\": it must be one of json, csv, text, svg, html",
                "as=csv&as=json|/as|as is given more than once",
                "theme=pink|/theme|theme is \"pink\": it must be one of auto, light, dark",
                "errors=inline|/errors|errors=inline goes with pick only",
                "pick=/verdict&errors=loud|/errors|errors is \"loud\": it must be inline",
                "pick=verdict|/pick|pick is \"verdict\": it must be a JSON Pointer into the"
                        + " answer, like /computed_by/version",
            })
    void anUnknownOptionIsRefused(String option, String at, String message) {
        get(ITEM + "&" + option)
                .statusCode(400)
                .body("errors[0].at", equalTo(at))
                .body("errors[0].message", equalTo(message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/no_such|no_such is not in the answer; known are",
                "/total_mass|total_mass is not in the answer; did you mean total_mass_g?",
                "/findings|this is a list: name one value of it by its index",
                "/computed_by|this is an object: name one of its values, version, models",
                "/findings/0|this is an object: name one of its values",
                "/findings/first/code|first is no index of a list; they count from 0",
                "/moments/99/mass_g|this answer has no value there",
                "/moments/99999999999999999999/mass_g|is no index of a list",
                "/static_margin_percent|this answer has no value there",
                "/verdict/0|a value has no parts, and so no 0",
                "/|is not in the answer",
                "/verdict~2|is not in the answer",
            })
    void aPickToNoValueIsRefusedWithItsPointer(String pointer, String message) {
        get(ITEM + "&pick=/verdict&pick=" + pointer)
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].at", equalTo(pointer.replace("~2", "~02")))
                .body("errors[0].message", containsString(message));
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "html"})
    void aFormThatIsNotOfferedNamesWhatIs(String form) {
        get(ITEM + "&pick=/verdict&as=" + form)
                .statusCode(406)
                .body("detail", equalTo("picked values are offered as text/plain (as=text), text/csv" + " (as=csv)"));
    }

    @Test
    void severalPicksAreNoBareValue() {
        get(ITEM + "&pick=/verdict&pick=/verdict&as=text").statusCode(406);
    }

    @Test
    void aFieldBesideABodyIsRefused() {
        LiveService.unlawful()
                .queryParam("target_arm_mm", "3")
                .body("{\"items\":[]}")
                .post(BALANCE)
                .then()
                .statusCode(400)
                .body("errors[0].at", equalTo("/target_arm_mm"))
                .body("errors[0].code", equalTo("unknown_parameter"));
    }

    @Test
    void aNameThatASpreadsheetWouldRunIsMadeText() {
        String query = "items.0.name=%3Dcmd()&items.0.mass_g=200&items.0.arm_mm=500&pick=/moments/0/name";
        String path = BALANCE + "?" + query;
        String bare = LiveService.lawful().urlEncodingEnabled(false).get(path).asString();
        String row = LiveService.lawful()
                .urlEncodingEnabled(false)
                .get(path + "&as=csv")
                .asString();
        assertThat(bare).isEqualTo("=cmd()");
        assertThat(row).isEqualTo("'=cmd()");
    }

    @Test
    void aNegativeNumberStaysANumber() {
        LiveService.lawful()
                .urlEncodingEnabled(false)
                .get(BALANCE + "?items.0.name=a&items.0.mass_g=2&items.0.arm_mm=-5&pick=/cg_arm_mm&pick=/verdict")
                .then()
                .body(startsWith("-5.0,"))
                .body(not(containsString("'")));
    }
}
