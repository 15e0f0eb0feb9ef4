package trestle.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import trestle.http.LiveService;

/** Studies over HTTP, against loops by hand and closed forms. */
class StudyHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static ValidatableResponse post(String study, String body) {
        return LiveService.open().body(body).post("/v1/" + study).then();
    }

    private static JsonNode answer(String study, String body) {
        return tree(post(study, body).statusCode(200).extract().asByteArray());
    }

    private static JsonNode tree(byte[] json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException noJson) {
            throw new UncheckedIOException(noJson);
        }
    }

    private static double figure(String calculation, ObjectNode request, String pick) {
        return tree(LiveService.open()
                        .queryParam("bands", "false")
                        .body(request.toString())
                        .post("/v1/" + calculation)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asByteArray())
                .at(pick)
                .asDouble();
    }

    /** The stretch that releases at 1.3 of the stall speed, closed in on by hand. */
    @Test
    void theStretchThatReleasesAtAMarginIsThatOfALoopByHand() {
        ObjectNode study = (ObjectNode) LiveService.example("solve-for");
        ObjectNode base = (ObjectNode) study.path("base");
        double low = 7;
        double high = 16;
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            LiveService.change(base, "/launch/stretch_m", String.valueOf(middle));
            if (figure("launch-and-climb", base, "/launch/margin_percent") < 30) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(answer("solve-for", study.toString()).path("value").asDouble())
                .isCloseTo(low, within(1e-5));
    }

    @Test
    void theCutoffThatLeavesAShareIsThatOfALoopByHand() {
        ObjectNode base = LiveService.changed("pack-energy", "/cutoff", "{\"cell_voltage_v\": 3.0}");
        String pick = "/usable_energy_wh";
        double full = figure("pack-energy", LiveService.change(base, "/cutoff/cell_voltage_v", "2.6"), pick);
        double target = 0.95 * full;
        double low = 2.6;
        double high = 3.6;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            LiveService.change(base, "/cutoff/cell_voltage_v", String.valueOf(middle));
            if (figure("pack-energy", base, pick) > target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        JsonNode found = answer(
                "solve-for",
                "{\"calculation\": \"pack-energy\", \"base\": " + base
                        + ", \"vary\": {\"at\": \"/cutoff/cell_voltage_v\", \"from\": 2.6, \"to\": 3.6},"
                        + " \"target\": {\"pick\": \"" + pick + "\", \"value\": " + target + "}}");
        assertThat(found.path("value").asDouble()).isCloseTo(low, within(1e-4));
    }

    /** The calculation knows its airspeed of best range too: two ways to one number. */
    @Test
    void theAirspeedOfLongestRangeIsThatOfTheCalculation() {
        ObjectNode base = (ObjectNode) LiveService.example("sensitivity").path("base");
        JsonNode found = answer(
                "solve-for",
                "{\"calculation\": \"endurance\", \"base\": " + base
                        + ", \"vary\": {\"at\": \"/airspeed_m_per_s\", \"from\": 10, \"to\": 24},"
                        + " \"target\": {\"pick\": \"/at_airspeed/ground_range_km\"}, \"objective\": \"largest\"}");
        assertThat(found.path("value").asDouble())
                .isCloseTo(figure("endurance", base, "/best_range/airspeed_m_per_s"), within(0.01));
        assertThat(found.path("picked").asDouble())
                .isCloseTo(figure("endurance", base, "/best_range/ground_range_km"), within(1e-3));
    }

    @Test
    void aTargetThatIsMetNowhereIsSaidWithWhatTheFigureIs() {
        ObjectNode study = LiveService.changed("solve-for", "/target/value", "400");
        post("solve-for", study.toString())
                .statusCode(200)
                .body("verdict", equalTo("attention"))
                .body("crossings", hasSize(0))
                .body("findings.code", hasItem("target-not-met"))
                .body("findings[0].message", containsString("runs from"));
    }

    @Test
    void everyValueMeetsEveryOtherInOrder() {
        JsonNode rows = answer(
                        "trade-study",
                        "{\"calculation\": \"wire-sizing\", \"base\": {\"current_a\": 14, \"length_mm\": 620, \"supply_voltage_v\": 25.2},"
                                + " \"factors\": [{\"at\": \"/length_mm\", \"values\": [300, 600]},"
                                + " {\"at\": \"/enclosure\", \"words\": [\"free_air\", \"foam_channel\"]},"
                                + " {\"at\": \"/current_a\", \"from\": 5, \"to\": 20, \"steps\": 4, \"scale\": \"log\"}],"
                                + " \"pick\": [\"/recommended/gauge\", \"/recommended/drop_v\"]}")
                .path("rows");
        assertThat(rows).hasSize(16);
        assertThat(rows.get(0).path("length_mm").asDouble()).isEqualTo(300);
        assertThat(rows.get(15).path("length_mm").asDouble()).isEqualTo(600);
        assertThat(rows.get(4).path("enclosure").asText()).isEqualTo("foam_channel");
        assertThat(rows.get(1).path("current_a").asDouble()).isCloseTo(5 * Math.cbrt(4), within(1e-7));
        ObjectNode one = MAPPER.createObjectNode().put("current_a", 20).put("length_mm", 600);
        one.put("supply_voltage_v", 25.2).put("enclosure", "foam_channel");
        assertThat(rows.get(15).path("recommended.drop_v").asDouble())
                .isCloseTo(figure("wire-sizing", one, "/recommended/drop_v"), within(1e-9));
    }

    @Test
    void aRefusedPointIsARowWithItsProblem() {
        ObjectNode study = LiveService.changed(
                "trade-study", "/factors/1", "{\"at\": \"/cutoff/cell_voltage_v\", \"values\": [3, 60]}");
        post("trade-study", study.toString())
                .statusCode(200)
                .body("failed", equalTo(4))
                .body("rows", hasSize(8))
                .body("rows[1].error", containsString("/cutoff/cell_voltage_v"));
    }

    @Test
    void slicesTogetherAreTheWhole() {
        ObjectNode study = (ObjectNode) LiveService.example("trade-study");
        JsonNode whole = answer("trade-study", study.toString()).path("rows");
        var joined = MAPPER.createArrayNode();
        for (int i = 0; i < 3; i++) {
            LiveService.change(study, "/slice", "{\"index\": " + i + ", \"of\": 3}");
            answer("trade-study", study.toString()).path("rows").forEach(joined::add);
        }
        assertThat(joined).isEqualTo(whole);
    }

    @Test
    void rowsAreStreamedAsATableAndAsLines() {
        String example = LiveService.example("trade-study").toString();
        String csv = LiveService.unchecked()
                .queryParam("as", "csv")
                .body(example)
                .post("/v1/trade-study")
                .then()
                .statusCode(200)
                .contentType("text/csv")
                .extract()
                .asString();
        assertThat(csv.split("\r?\n")).hasSize(17);
        assertThat(csv).startsWith("ambient_c,cutoff.cell_voltage_v,usable_energy_wh,energy_below_cutoff_wh,error");
        String lines = LiveService.unchecked()
                .header("Accept", "application/x-ndjson")
                .body(example)
                .post("/v1/trade-study")
                .then()
                .statusCode(200)
                .contentType("application/x-ndjson")
                .extract()
                .asString();
        JsonNode rows = answer("trade-study", example).path("rows");
        String[] each = lines.split("\n");
        assertThat(each).hasSize(16);
        for (int i = 0; i < each.length; i++) {
            assertThat(tree(each[i].getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                    .isEqualTo(rows.get(i));
        }
    }

    /** Rows come while they are made: the first of many arrives long before the last could. */
    @Test
    void whoHangsUpEndsAStudy() throws Exception {
        String study =
                "{\"calculation\": \"mass-balance\", \"base\": {\"items\": [{\"name\": \"a\", \"mass_g\": 4700, \"arm_mm\": 678}]},"
                        + " \"factors\": [{\"at\": \"/items/0/mass_g\", \"from\": 100, \"to\": 9000, \"steps\": 1000000}],"
                        + " \"pick\": [\"/total_mass_g\"]}";
        for (int call = 0; call < 6; call++) {
            HttpResponse<InputStream> response = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(LiveService.address() + "/v1/trade-study?as=csv"))
                                    .header("Content-Type", "application/json")
                                    .POST(HttpRequest.BodyPublishers.ofString(study))
                                    .build(),
                            HttpResponse.BodyHandlers.ofInputStream());
            assertThat(response.statusCode()).isEqualTo(200);
            try (InputStream body = response.body()) {
                assertThat(body.readNBytes(200)).hasSize(200);
            }
            // As many as may stream at once are let in one after the other only if each has ended.
            Thread.sleep(1000);
        }
    }

    @Test
    void aPlanOfBillionsIsRefusedBeforeItBegins() {
        String factor = "{\"at\": \"/length_mm\", \"from\": 100, \"to\": 900, \"steps\": 1000000}";
        post(
                        "trade-study",
                        "{\"calculation\": \"wire-sizing\", \"base\": {\"current_a\": 14, \"length_mm\": 620, \"supply_voltage_v\": 25.2},"
                                + " \"factors\": [" + factor + ", "
                                + factor.replace("length_mm", "current_a")
                                        .replace("100,", "1,")
                                        .replace("900", "90")
                                + "], \"pick\": [\"/recommended/gauge\"]}")
                .statusCode(422)
                .body("errors[0].at", equalTo("/factors"))
                .body("errors[0].code", equalTo("too_many_points"));
    }

    @Test
    void whatPointsNowhereIsNamedWhereItStands() {
        post(
                        "trade-study",
                        LiveService.changed("trade-study", "/factors/0/at", "\"/ambient\"")
                                .toString())
                .statusCode(422)
                .body("errors[0].at", equalTo("/factors/0/at"))
                .body("errors[0].message", containsString("ambient_c"));
        post(
                        "trade-study",
                        LiveService.changed("trade-study", "/pick", "[\"/segments\"]")
                                .toString())
                .statusCode(422)
                .body("errors[0].at", equalTo("/pick/0"));
        post(
                        "trade-study",
                        LiveService.changed("trade-study", "/factors/0/at", "\"/segments\"")
                                .toString())
                .statusCode(422)
                .body("errors[0].message", containsString("list"));
        post(
                        "sensitivity",
                        LiveService.changed("sensitivity", "/base/takeoff_mass_g", "\"heavy\"")
                                .toString())
                .statusCode(422)
                .body("errors[0].at", equalTo("/base/takeoff_mass_g"));
        LiveService.unlawful()
                .body(LiveService.changed("sensitivity", "/calculation", "\"trade-study\"")
                        .toString())
                .post("/v1/sensitivity")
                .then()
                .statusCode(400)
                .body("errors[0].at", equalTo("/calculation"));
    }

    @Test
    void aDistributionWithoutWidthIsRefused() {
        post(
                        "uncertainty",
                        LiveService.changed(
                                        "uncertainty",
                                        "/uncertain/0",
                                        "{\"at\": \"/takeoff_mass_g\", \"distribution\": \"uniform\", \"low\": 6000, \"high\": 6000}")
                                .toString())
                .statusCode(422)
                .body("errors[0].at", equalTo("/uncertain/0/high"));
    }

    /** The centre of gravity's mass is a sum: its deviation is the root of the sum of squares. */
    @Test
    void aSumOfNormalsHasTheRootOfTheSumOfSquares() {
        StringBuilder items = new StringBuilder();
        StringBuilder uncertain = new StringBuilder();
        double[] deviations = {30, 40, 120};
        for (int i = 0; i < deviations.length; i++) {
            String comma = i == 0 ? "" : ", ";
            items.append(comma).append("{\"name\": \"n" + i + "\", \"mass_g\": 2000, \"arm_mm\": 500}");
            uncertain
                    .append(comma)
                    .append("{\"at\": \"/items/" + i + "/mass_g\", \"distribution\": \"normal\", \"mean\": 2000,"
                            + " \"standard_deviation\": " + deviations[i] + "}");
        }
        JsonNode figure = answer(
                        "uncertainty",
                        "{\"calculation\": \"mass-balance\", \"base\": {\"items\": [" + items + "]}, \"uncertain\": ["
                                + uncertain + "], \"samples\": 4000, \"pick\": [\"/total_mass_g\"]}")
                .at("/figures/0");
        assertThat(figure.path("mean").asDouble()).isCloseTo(6000, within(1.0));
        assertThat(figure.path("standard_deviation").asDouble()).isCloseTo(130, within(1.3));
        assertThat(figure.at("/influence/0/at").asText()).isEqualTo("/items/2/mass_g");
        assertThat(figure.at("/influence/0/share_percent").asDouble())
                .isCloseTo(100 * 120.0 * 120 / (130 * 130), within(1.0));
    }

    @Test
    void theSameSeedGivesTheSameBytesAndAnotherDoesNot() {
        ObjectNode study = LiveService.changed("uncertainty", "/samples", "64");
        byte[] first = post("uncertainty", study.toString()).extract().asByteArray();
        assertThat(post("uncertainty", study.toString()).extract().asByteArray())
                .isEqualTo(first);
        LiveService.change(study, "/seed", "7");
        assertThat(post("uncertainty", study.toString()).extract().asByteArray())
                .isNotEqualTo(first);
    }

    /** What the calculation itself estimates is drawn too, unless told not to. */
    @Test
    void ownEstimatesAreDrawnUnlessToldNotTo() {
        ObjectNode study = LiveService.changed("uncertainty", "/base/drag", null);
        LiveService.change(study, "/uncertain", "[]");
        LiveService.change(study, "/samples", "100");
        JsonNode with = answer("uncertainty", study.toString()).at("/figures/0");
        assertThat(with.at("/influence/0/at").asText()).isEqualTo("/drag/zero_lift_coefficient");
        LiveService.change(study, "/own_estimates", "false");
        JsonNode without = answer("uncertainty", study.toString()).at("/figures/0");
        assertThat(without.path("standard_deviation").asDouble()).isLessThan(1e-9);
        assertThat(with.path("standard_deviation").asDouble()).isGreaterThan(0.05);
    }

    /** A figure that is inversely proportional to a number falls by 1 % for each. */
    @Test
    void effectsAreThoseOfTheClosedForm() {
        JsonNode effects = answer(
                        "sensitivity", LiveService.example("sensitivity").toString())
                .at("/figures/0/effects");
        TreeMap<String, Double> byField = new TreeMap<>();
        effects.forEach(effect -> byField.put(
                effect.path("at").asText(), effect.path("change_per_percent").asDouble()));
        assertThat(byField.get("/usable_energy_wh")).isCloseTo(1, within(1e-4));
        assertThat(byField.get("/reserve_percent")).isCloseTo(-25 / 75.0, within(1e-4));
        assertThat(byField.get("/efficiency/motor")).isCloseTo(byField.get("/efficiency/propeller"), within(1e-9));
        double before = Double.MAX_VALUE;
        for (JsonNode effect : effects) {
            double size = Math.abs(effect.path("change_per_percent").asDouble());
            assertThat(size).isLessThanOrEqualTo(before);
            before = size;
        }
        assertThat(List.copyOf(byField.keySet())).contains("/drag/zero_lift_coefficient", "/conditions/temperature_c");
    }

    @Test
    void aPartOfTheReviewIsStudiedAsItStandsAlone() {
        ObjectNode study =
                MAPPER.createObjectNode().put("calculation", "build-review").put("review_part", "endurance");
        study.set("base", LiveService.example("build-review"));
        study.putArray("pick").add("/at_airspeed/endurance_h");
        study.putArray("at").add("/airframe/drag/zero_lift_coefficient");
        JsonNode figure = answer("sensitivity", study.toString()).at("/figures/0");
        assertThat(figure.path("value").asDouble()).isCloseTo(1.81, within(0.05));
        assertThat(figure.at("/effects/0/change_per_percent").asDouble()).isBetween(-1.0, -0.3);
    }

    @Test
    void whatIsTooDearForOneAnswerIsRefused() {
        ObjectNode study = MAPPER.createObjectNode().put("calculation", "build-review");
        study.set("base", LiveService.example("build-review"));
        study.putArray("pick").add("/bands/endurance_h/p10");
        study.put("samples", 500);
        post("uncertainty", study.toString())
                .statusCode(422)
                .body("errors[0].at", equalTo("/samples"))
                .body("errors[0].code", equalTo("too_dear"));
    }
}
