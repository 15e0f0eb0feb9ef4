package trestle.endpoint.buildreview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trestle.contract.Contract;
import trestle.contract.Misfits;
import trestle.http.LiveService;

/**
 * One file asks everything: a part of the review, asked alone, answers as in the whole. A query cannot change the schema
 * of an answer in OpenAPI, so the answers are held against the part's own here.
 */
class PartHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** What the review says once for all its parts. */
    private static final Set<String> OF_THE_WHOLE =
            Set.of("assumptions", "estimates", "bands", "risks", "verdict", "findings");

    private static RequestSpecification asked(String part, String run) {
        RequestSpecification request = LiveService.unchecked().queryParam("part", part);
        return run == null ? request : request.queryParam("run", run);
    }

    private static JsonNode tree(ValidatableResponse response) {
        try {
            return MAPPER.readTree(response.statusCode(200).extract().asByteArray());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "mass-balance, , /mass_balance",
        "pack-energy, , /pack_energy",
        "wire-sizing, main lead, /wire_sizing/0/answer",
        "wire-sizing, sampler feed, /wire_sizing/1/answer",
        "endurance, , /endurance",
        "propulsion-match, , /propulsion_match",
        "rail-budget, , /rail_budget",
        "launch-and-climb, , /launch_and_climb",
        "compass-clearance, , /compass_clearance",
        "pack-charge, , /pack_charge",
    })
    void aPartAloneAnswersAsInTheWhole(String part, String run, String at) {
        JsonNode example = LiveService.example("build-review");
        JsonNode whole = tree(LiveService.answer("build-review", (ObjectNode) example));
        JsonNode alone = tree(asked(part, run)
                .body(example.toString())
                .post("/v1/build-review")
                .then());
        assertThat(Misfits.of(alone, Contract.answer(part))).isEmpty();
        JsonNode within = whole.at(at);
        alone.fieldNames().forEachRemaining(field -> {
            if (!OF_THE_WHOLE.contains(field)) {
                assertThat(alone.path(field)).as(field).isEqualTo(within.path(field));
            }
        });
        assertThat(within.size()).isLessThanOrEqualTo(alone.size());
    }

    @Test
    void aPartIsPickedDrawnAndTabled() {
        String example = LiveService.example("build-review").toString();
        asked("endurance", null)
                .queryParam("pick", "/best_endurance/endurance_h")
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(200)
                .contentType("text/plain");
        asked("endurance", null)
                .queryParam("as", "svg")
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(200)
                .contentType("image/svg+xml")
                .body(startsWith("<svg"));
        asked("pack-energy", null)
                .queryParam("as", "csv")
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(200)
                .body(containsString("usable_energy_wh"));
        asked("mass-balance", null)
                .queryParam("workings", "true")
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(200)
                .body("workings[0].symbol", notNullValue());
    }

    /** Estimates and bands are those of the document; the band is of the part's own figures. */
    @Test
    void aPartCarriesItsBands() {
        LiveService.unchecked()
                .body(LiveService.example("build-review").toString())
                .post("/v1/build-review?part=endurance&bands=full")
                .then()
                .statusCode(200)
                .body("bands.endurance_h.p10", notNullValue())
                .body("bands.static_margin_percent", nullValue())
                .body("estimates[0].at", startsWith("/propulsion/propeller"));
    }

    @Test
    void anUnknownPartIsRefusedWithTheNearest() {
        String example = LiveService.example("build-review").toString();
        asked("enduranse", null)
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(400)
                .body("errors[0].at", equalTo("/part"))
                .body("errors[0].message", containsString("did you mean endurance"));
        asked("build-review", null)
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(400);
        asked("endurance", null)
                .body(LiveService.example("endurance").toString())
                .post("/v1/endurance")
                .then()
                .statusCode(400)
                .body("errors[0].message", containsString("answered whole"));
    }

    @Test
    void oneOfSeveralRunsHasToBeNamed() {
        String example = LiveService.example("build-review").toString();
        asked("wire-sizing", null)
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(422)
                .body("errors[0].message", containsString("main lead, sampler feed"));
        asked("wire-sizing", "tail lead")
                .body(example)
                .post("/v1/build-review")
                .then()
                .statusCode(422)
                .body("errors.at", hasItem("/wiring"));
    }

    @Test
    void aPartThatIsNotDescribedIsRefused() {
        ObjectNode bare = LiveService.changed("build-review", "/compass", null);
        asked("compass-clearance", null)
                .body(bare.toString())
                .post("/v1/build-review")
                .then()
                .statusCode(422)
                .body("errors[0].at", equalTo("/compass"));
    }

    @Test
    void aQueryAsksForAPartToo() {
        LiveService.unchecked()
                .get(
                        "/v1/build-review?part=endurance&airframe.kind=payload_pusher&airframe.takeoff_mass_g=6600"
                                + "&airframe.wing.span_mm=2800&airframe.wing.mean_chord_mm=280&packs.0.layout=7s3p"
                                + "&packs.0.cell.kind=energy&packs.0.cell.format=21700&propulsion.motor.speed_constant_rpm_per_v=320"
                                + "&propulsion.propeller.size=15x8&flight.airspeed_m_per_s=16&pick=/at_airspeed/power_w&bands=false")
                .then()
                .statusCode(200)
                .contentType("text/plain");
    }
}
