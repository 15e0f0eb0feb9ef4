package trestle.rendering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.http.Flat;
import trestle.http.LiveService;

/** The drawing of each calculation in a review of the whole aircraft. */
class PartFigureHttpTest {
    private static ValidatableResponse drawn(ObjectNode document, String pointer, String more) {
        return LiveService.unchecked()
                .body(document.toString())
                .post("/v1/build-review?as=svg&pick=" + pointer + more)
                .then();
    }

    private static ObjectNode example() {
        return (ObjectNode) LiveService.example("build-review");
    }

    @ParameterizedTest
    @CsvSource({
        "/mass_balance, Mass and balance",
        "/pack_energy, Discharge of the pack",
        "/wire_sizing/0, Gauges for the run",
        "/wire_sizing/1, Gauges for the run",
        "/propulsion_match, Drive at full throttle",
        "/endurance, Endurance and range",
        "/rail_budget, Load of the rails",
        "/launch_and_climb, Launch",
        "/compass_clearance, Field of the leads"
    })
    void everyCalculationOfTheReviewHasItsDrawing(String pointer, String title) {
        drawn(example(), pointer, "")
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .body(startsWith("<svg "), containsString(">" + title), containsString("</svg>"));
    }

    @Test
    void everyPartOfTheAnswerIsDrawn() {
        ObjectNode document = example();
        Map<String, Object> answer =
                LiveService.answer("build-review", document).extract().path("$");
        answer.forEach((name, part) -> {
            if (part instanceof Map<?, ?> judged && judged.containsKey("findings")) {
                drawn(document, "/" + name, "").statusCode(200);
            }
        });
    }

    @Test
    void theDrawingShowsTheAircraftOfTheDocument() {
        ObjectNode document = example();
        ((ObjectNode) document.at("/wiring/0")).put("name", "heron lead");
        ((ObjectNode) document.at("/compass/runs/0")).put("run", "heron lead");
        String svg = drawn(document, "/compass_clearance", "").extract().asString();
        assertThat(svg).contains("heron lead");
    }

    @Test
    void theThemeIsKept() {
        String light =
                drawn(example(), "/pack_energy", "&theme=light").extract().asString();
        String dark = drawn(example(), "/pack_energy", "&theme=dark").extract().asString();
        assertThat(light).contains("trestle-light").doesNotContain("trestle-dark");
        assertThat(dark).contains("trestle-dark").doesNotContain("trestle-light");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/wire_sizing/2", "/launch_and_climb"})
    void aPartThatThisAnswerLacksIsRefused(String pointer) {
        ObjectNode document = example();
        ((ObjectNode) document.at("/flight")).remove("launch");
        drawn(document, pointer, "")
                .statusCode(422)
                .contentType(startsWith("application/problem+json"))
                .body("errors.at", hasItem(pointer))
                .body("errors[0].code", equalTo("nothing_to_pick"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/wire_sizing", "/wire_sizing/0/answer", "/key_figures", "/wat"})
    void whatIsNoDrawnPartIsRefusedAsAnyPickIs(String pointer) {
        drawn(example(), pointer, "").statusCode(422).body("errors.at", hasItem(pointer));
    }

    @Test
    void aNumberIsNotDrawn() {
        drawn(example(), "/key_figures/total_mass_g", "").statusCode(406);
    }

    @Test
    void anObjectIsNotPickedAsText() {
        LiveService.unchecked()
                .body(example().toString())
                .post("/v1/build-review?pick=/pack_energy")
                .then()
                .statusCode(422);
    }

    @Test
    void byQueryEachDrawingHasATagOfItsOwn() {
        String tag = got("/pack_energy", "\"none\"").statusCode(200).extract().header("ETag");
        got("/pack_energy", tag).statusCode(304);
        got("/endurance", tag).statusCode(200).contentType(startsWith("image/svg+xml"));
    }

    private static ValidatableResponse got(String pointer, String held) {
        return LiveService.unchecked()
                .queryParams(Flat.all(example()))
                .queryParam("as", "svg")
                .queryParam("pick", pointer)
                .header("If-None-Match", held)
                .get("/v1/build-review")
                .then();
    }
}
