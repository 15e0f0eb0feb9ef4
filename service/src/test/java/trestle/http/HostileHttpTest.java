package trestle.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;

/** Requests that once stopped the service, filled its memory, or were answered with nonsense. */
@Timeout(120)
class HostileHttpTest {
    private static final String PACK = "{\"segments\":[{\"series\":6,\"parallel\":1,\"cell\":{\"chemistry\":\"lipo\","
            + "\"capacity_ah\":10}}],\"load\":{%s}%s}";

    /** Its answer was an endless loop: a power so small that no time step ended it. */
    @ParameterizedTest
    @ValueSource(strings = {"1e-307", "1e-310", "4.9e-324", "0", "-1e-307"})
    void aLoadOfNextToNothingIsBelowItsLeast(String power) {
        LiveService.unlawful()
                .body(PACK.formatted("\"power_w\":" + power, ""))
                .post("/v1/pack-energy")
                .then()
                .statusCode(400)
                .body("errors.at", hasItem("/load/power_w"));
        LiveService.unlawful()
                .get("/v1/pack-energy?segments.0.series=6&segments.0.parallel=1&segments.0.cell.chemistry=lipo"
                        + "&segments.0.cell.capacity_ah=10&load.power_w=" + power)
                .then()
                .statusCode(400)
                .body("errors.at", hasItem("/load/power_w"));
    }

    @Test
    void aReleaseFromNextToNoHeightIsBelowItsLeast() {
        ObjectNode request = LiveService.changed("launch-and-climb", "/launch/release_height_m", "1e-200");
        LiveService.refused("launch-and-climb", 400, request).body("errors.at", hasItem("/launch/release_height_m"));
    }

    /** Leads of 3 ohm at 9 A take more than the pack has: it gives nothing, and that is a stop. */
    @Test
    void aPackWhoseVoltageIsGoneIsAStopWithoutNegativeEnergy() {
        JsonNode answer = tree(LiveService.lawful()
                .body(PACK.formatted("\"current_a\":9", ",\"lead_resistance_milliohm\":3000"))
                .post("/v1/pack-energy")
                .then()
                .statusCode(200)
                .body("verdict", equalTo("stop"))
                .extract()
                .asByteArray());
        assertThat(answer.path("usable_energy_wh").asDouble()).isGreaterThanOrEqualTo(0);
        for (Map.Entry<String, JsonNode> field : answer.properties()) {
            if (field.getKey().endsWith("_v") || field.getKey().endsWith("_wh")) {
                assertThat(field.getValue().asDouble()).as(field.getKey()).isGreaterThanOrEqualTo(0);
            }
        }
    }

    private static JsonNode tree(byte[] json) {
        try {
            return Json.MAPPER.readTree(json);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What costs most of what the contract allows: it took 17.6 s of one core. */
    @Test
    void anEnduranceOfLongCurvesWithoutMassesIsQuick() {
        ObjectNode request = LiveService.changed("endurance", "/pack/cutoff", null);
        ArrayNode segments = (ArrayNode) request.at("/pack/segments");
        ObjectNode cell = (ObjectNode) segments.get(0).path("cell");
        cell.remove("mass_g");
        ArrayNode curve = cell.putArray("open_circuit_curve");
        for (int i = 0; i < 500; i++) {
            curve.addObject().put("state_of_charge_percent", 100 * i / 499.0).put("voltage_v", 3.0 + 1.2 * i / 499.0);
        }
        ((ObjectNode) segments.get(0)).put("series", 1);
        while (segments.size() < 20) {
            segments.add(segments.get(0).deepCopy());
        }
        assertThat(cpuMs(
                        Catalogue.calculations().stream()
                                .filter(c -> c.name().equals("endurance"))
                                .findFirst()
                                .orElseThrow(),
                        request))
                .as("processor time, ms; on a warm machine a tenth of it")
                .isLessThan(5000);
    }

    private static <Q, R, W, A> double cpuMs(Calculation<Q, R, W, A> calculation, JsonNode request) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Q bound = Binder.bind(request, calculation.requestType());
        Json.bytes(calculation.answer(calculation.done(bound, Certainty.ESTIMATED)));
        double tookMs = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        return tookMs;
    }

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    /** Numbers that divide to infinity: each field of each example in turn. */
    @ParameterizedTest
    @MethodSource("calculations")
    void noNumberIsSoSmallOrLargeThatTheServiceFails(String calculation) {
        JsonNode example = LiveService.example(calculation);
        List<String> pointers = new ArrayList<>();
        numbers("", example, pointers);
        assertThat(pointers).isNotEmpty();
        // A long list of like rows is tried in part.
        int step = 1 + pointers.size() / 12;
        for (int i = 0; i < pointers.size(); i += step) {
            for (String value : List.of("1e-310", "-4.9e-324", "1.7e308", "-0.0")) {
                ObjectNode request = LiveService.change(example.deepCopy(), pointers.get(i), value);
                int status = LiveService.unlawful()
                        .body(request.toString())
                        .post("/v1/" + calculation)
                        .statusCode();
                assertThat(status).as("%s = %s", pointers.get(i), value).isIn(200, 400, 422);
            }
        }
    }

    private static void numbers(String at, JsonNode node, List<String> pointers) {
        if (node.isNumber()) {
            pointers.add(at);
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                numbers(at + "/" + i, node.get(i), pointers);
            }
        } else if (node.isObject()) {
            node.properties().forEach(field -> numbers(at + "/" + field.getKey(), field.getValue(), pointers));
        }
    }

    @Test
    void listsBeyondTheirSizeAreRefusedQuickly() {
        long start = System.nanoTime();
        LiveService.unlawful()
                .body("{\"items\":[" + "{},".repeat(33_000) + "{}]}")
                .post("/v1/mass-balance")
                .then()
                .statusCode(400);
        LiveService.unlawful()
                .contentType("text/csv")
                .body(("a".repeat(900_000) + "\n1\n").getBytes(StandardCharsets.UTF_8))
                .post("/v1/mass-balance")
                .then()
                .statusCode(400);
        assertThat((System.nanoTime() - start) / 1e9).as("seconds").isLessThan(10);
    }

    @Test
    void aBodyInPiecesThatIsTooLargeIsRefused() {
        String piece = "10000\r\n" + " ".repeat(65_536) + "\r\n";
        assertThat(RawHttp.answerTo("POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                        + "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n" + piece.repeat(16)
                        + "1\r\n \r\n0\r\n\r\n"))
                .startsWith("HTTP/1.1 413 ")
                .contains("/problems/too-large");
    }

    @ParameterizedTest
    @ValueSource(strings = {"br", "gzip", "x-none"})
    void aPackedBodyIsRefusedRatherThanMisread(String coding) {
        LiveService.unlawful()
                .header("Content-Encoding", coding)
                .body("{\"items\":[{\"name\":\"a\",\"mass_g\":1000,\"arm_mm\":1}]}")
                .post("/v1/mass-balance")
                .then()
                .statusCode(415);
    }

    @ParameterizedTest
    @CsvSource({"json, ''", "svg, default-src 'none'", "html, default-src 'none'", "text, default-src 'none'"})
    void whatABrowserMayRunIsNothing(String form, String policy) {
        var answer = LiveService.lawful()
                .body(LiveService.example("build-review").toString())
                .post("/v1/build-review?estimates=false&bands=false&as=" + form
                        + (form.equals("text") ? "&pick=/verdict" : ""));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
        String said = answer.header("Content-Security-Policy");
        if (policy.isEmpty()) {
            assertThat(said).isNull();
        } else {
            assertThat(said).contains(policy, "base-uri 'none'").doesNotContain("script");
        }
    }

    @Test
    void aPageThatMayReadAnswersMayReadWhyThereIsNone() {
        try (Service service = Service.start(
                Settings.onAFreePort().admitting(Admission.ofAnyone().from(List.of("http://board.example"))))) {
            given().baseUri("http://127.0.0.1:" + service.port())
                    .header("Origin", "http://board.example")
                    .contentType("application/json")
                    .body(" ".repeat(1_100_000))
                    .post("/v1/mass-balance")
                    .then()
                    .statusCode(413)
                    .header("Access-Control-Allow-Origin", "http://board.example");
        }
    }
}
