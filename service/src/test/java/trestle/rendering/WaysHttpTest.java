package trestle.rendering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.batch.Csv;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.finding.Caution;
import trestle.http.Flat;
import trestle.http.LiveService;

/** The ways to an answer: every calculation of the catalogue has all of them. */
class WaysHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String WIRE = "/v1/wire-sizing";
    private static final Map<String, String> RUN =
            Map.of("current_a", "28", "length_mm", "620", "supply_voltage_v", "22.2");

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    /** Those that answer with one row; a trade study's table is its rows. */
    static List<String> ofOneRow() {
        return Catalogue.calculations().stream()
                .filter(calculation -> !calculation.tabled())
                .map(Calculation::name)
                .toList();
    }

    private static RequestSpecification query(String name) {
        return LiveService.lawful().queryParams(Flat.all(LiveService.example(name)));
    }

    private static RequestSpecification run() {
        return LiveService.lawful().queryParams(RUN);
    }

    private static JsonNode answer(String name) {
        return tree(query(name).get("/v1/" + name).asString());
    }

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException noJson) {
            throw new AssertionError(json, noJson);
        }
    }

    @Test
    void aCellOfASpreadsheetGetsOneNumber() {
        Response answer = run().queryParam("pick", "/total_drop_v").get(WIRE);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualTo("text/plain;charset=utf-8");
        assertThat(answer.asString()).matches("0\\.[0-9]+");
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theQueryGetsTheBytesThatTheBodyGets(String name) {
        byte[] posted = LiveService.lawful()
                .body(LiveService.example(name).toString())
                .post("/v1/" + name)
                .asByteArray();
        Response got = query(name).get("/v1/" + name);
        assertThat(got.statusCode()).as(got.asString()).isEqualTo(200);
        assertThat(got.asByteArray()).isEqualTo(posted);
    }

    @ParameterizedTest
    @MethodSource("ofOneRow")
    void aTableBeginsWithItsCautionsOnRequestOnly(String name) {
        String usual = query(name).queryParam("as", "csv").get("/v1/" + name).asString();
        String cautioned = query(name)
                .queryParams("as", "csv", "cautions", "true")
                .get("/v1/" + name)
                .asString();

        assertThat(usual).doesNotStartWith("#");
        assertThat(cautioned).startsWith("# " + Caution.AID + "\r\n").endsWith("\r\n" + usual);
        for (JsonNode caution : answer(name).path("cautions")) {
            assertThat(cautioned).contains("\r\n# " + caution.asText() + "\r\n");
        }
        assertThat(cautioned.lines().filter(line -> !line.startsWith("#"))).hasSize(2);
    }

    @Test
    void pickedCellsHaveTheirCautionsAboveThemToo() {
        String cells = run().queryParams("pick", "/total_drop_v", "as", "csv", "cautions", "true")
                .get(WIRE)
                .asString();

        assertThat(cells.lines()).first().isEqualTo("# " + Caution.AID);
        assertThat(cells).containsPattern("\r\n0\\.[0-9]+$");
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theQueryInTheContractIsAnswered(String name) throws IOException {
        JsonNode contract =
                MAPPER.readTree(LiveService.lawful().get("/openapi.json").asByteArray());
        JsonNode get = contract.path("paths").path("/v1/" + name).path("get");
        Map<String, String> fields = Map.of();
        for (JsonNode parameter : get.path("parameters")) {
            if (parameter.path("name").asText().equals("fields")) {
                fields = Flat.outsideLists(parameter.path("example"));
            }
        }
        assertThat(fields).isNotEmpty();
        LiveService.lawful().queryParams(fields).get("/v1/" + name).then().statusCode(200);
    }

    @ParameterizedTest
    @MethodSource("ofOneRow")
    void csvIsAHeaderAndARowOfWhatStandsInNoList(String name) {
        Response answer = query(name).queryParam("as", "csv").get("/v1/" + name);
        assertThat(answer.contentType()).isEqualTo("text/csv;charset=utf-8");
        String[] lines = answer.asString().split("\r\n", -1);
        assertThat(lines).hasSize(3);
        assertThat(lines[2]).isEmpty();
        List<String> names = Csv.cells(lines[0]);
        List<String> cells = Csv.cells(lines[1]);
        assertThat(cells).hasSameSizeAs(names);
        Map<String, String> expected = Flat.outsideLists(answer(name));
        for (int i = 0; i < names.size(); i++) {
            assertThat(cells.get(i)).as(names.get(i)).isEqualTo(expected.getOrDefault(names.get(i), ""));
        }
        assertThat(names).containsAll(expected.keySet());
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void textHasALineForEachPlainValue(String name) {
        Response answer = query(name).queryParam("as", "text").get("/v1/" + name);
        assertThat(answer.contentType()).isEqualTo("text/plain;charset=utf-8");
        Map<String, String> expected = Flat.all(answer(name));
        List<String> lines = answer.asString().lines().toList();
        assertThat(lines).hasSize(expected.size());
        for (String line : lines) {
            String[] parts = line.split(" +", 2);
            assertThat(parts[1]).as(line).isEqualTo(expected.get(parts[0]));
        }
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theHeaderAsksForTheSameAsTheWord(String name) {
        for (String[] pair :
                new String[][] {{"application/json", "json"}, {"text/csv", "csv"}, {"text/plain", "text"}}) {
            byte[] byHeader = query(name)
                    .accept(pair[0] + ";q=0.9, */*;q=0.1")
                    .get("/v1/" + name)
                    .asByteArray();
            byte[] byWord =
                    query(name).queryParam("as", pair[1]).get("/v1/" + name).asByteArray();
            assertThat(byHeader).as(pair[1]).isEqualTo(byWord);
        }
    }

    @ParameterizedTest
    @MethodSource("ofOneRow")
    void anyPlainValueOfTheAnswerCanBePicked(String name) {
        String request = LiveService.example(name).toString();
        JsonNode answer =
                tree(LiveService.lawful().body(request).post("/v1/" + name).asString());
        Map<String, String> values = Flat.all(answer);
        int every = Math.max(1, values.size() / 20);
        List<String> names = List.copyOf(values.keySet());
        for (int i = 0; i < names.size(); i += every) {
            String pointer = "/" + names.get(i).replace('.', '/');
            // An empty value has no bytes, which the contract's checker takes for no answer.
            boolean empty = values.get(names.get(i)).isEmpty();
            (empty ? LiveService.unchecked() : LiveService.lawful())
                    .queryParam("pick", pointer)
                    .body(request)
                    .post("/v1/" + name)
                    .then()
                    .statusCode(200)
                    .contentType("text/plain;charset=utf-8")
                    .body(equalTo(values.get(names.get(i))));
        }
    }

    @Test
    void severalPicksAreARowInTheirOrder() {
        Response answer = run().queryParam("pick", "/verdict", "/candidates/0/gauge", "/connector_drop_v")
                .get(WIRE);
        assertThat(answer.contentType()).isEqualTo("text/csv;charset=utf-8");
        assertThat(answer.asString()).isEqualTo("attention,30,0.0");
    }

    @Test
    void onePickAsCsvIsARowToo() {
        run().queryParam("pick", "/verdict")
                .queryParam("as", "csv")
                .get(WIRE)
                .then()
                .contentType(startsWith("text/csv"))
                .body(equalTo("attention"));
    }

    @Test
    void spreadsheetsWriteNumbersAndTruthTheirOwnWay() {
        String plain = run().queryParam("feeds_controller", "true").get(WIRE).asString();
        String spelt = LiveService.lawful()
                .queryParam("current_a", "2.8E+1")
                .queryParam("length_mm", " 620. ")
                .queryParam("supply_voltage_v", "+22.20")
                .queryParam("feeds_controller", "TRUE")
                .queryParam("gauge", "")
                .get(WIRE)
                .asString();
        assertThat(spelt).isEqualTo(plain);
    }

    @Test
    void aFaultCanBeTheValueOfTheCell() {
        LiveService.unlawful()
                .queryParams(RUN)
                .queryParam("peak_current_a", "12")
                .queryParam("pick", "/total_drop_v")
                .queryParam("errors", "inline")
                .get(WIRE)
                .then()
                .statusCode(200)
                .contentType("text/plain;charset=utf-8")
                .header("Cache-Control", "no-store")
                .body(startsWith("#ERR 422 /peak_current_a: "));
    }

    @Test
    void aBrowserGetsJsonWhereThereIsNoPage() {
        run().accept("text/html,application/xhtml+xml,*/*;q=0.8")
                .get(WIRE)
                .then()
                .statusCode(200)
                .contentType("application/json");
    }
}
