package trestle.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.finding.Caution;
import trestle.http.Flat;
import trestle.http.LiveService;

/** Many requests in one body. */
class BatchHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String NDJSON = "application/x-ndjson";
    private static final String CSV = "text/csv";
    private static final String WIRE = "wire-sizing";

    /** Those that answer with one row; a trade study's table is its rows. */
    static List<String> ofOneRow() {
        return Catalogue.calculations().stream()
                .filter(calculation -> !calculation.tabled())
                .map(Calculation::name)
                .toList();
    }

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    private static Response post(String name, String type, String query, String body) {
        return LiveService.lawful()
                .urlEncodingEnabled(false)
                .contentType(type)
                .body(body.getBytes(StandardCharsets.UTF_8))
                .post("/v1/" + name + query);
    }

    private static ValidatableResponse refused(String type, String query, String body) {
        return post(WIRE, type, query, body).then().contentType(startsWith("application/problem+json"));
    }

    private static String run(double currentA) {
        return "{\"current_a\":" + currentA + ",\"length_mm\":620,\"supply_voltage_v\":22.2}";
    }

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException noJson) {
            throw new AssertionError(json, noJson);
        }
    }

    @Test
    void threeRunsAreThreeGauges() {
        String table = "current_a,length_mm,supply_voltage_v\n5,620,22.2\n28,620,22.2\n80,620,22.2\n";
        assertThat(post(WIRE, CSV, "?pick=/recommended/gauge", table).asString())
                .isEqualTo("recommended.gauge,error\r\n24,\r\n14,\r\n10,\r\n");
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void aLineIsAnsweredAsABodyIs(String name) {
        String example = LiveService.example(name).toString();
        String alone = LiveService.lawful().body(example).post("/v1/" + name).asString();
        Response batch = post(name, NDJSON, "", example + "\n" + example + "\r\n\n" + example);
        assertThat(batch.statusCode()).isEqualTo(200);
        assertThat(batch.contentType()).startsWith(NDJSON);
        assertThat(batch.asString()).isEqualTo((alone + "\n").repeat(3));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void aLineHasItsWorkingsWhereTheyAreAskedFor(String name) {
        String example = LiveService.example(name).toString();
        String alone = LiveService.lawful()
                .body(example)
                .queryParam("workings", true)
                .post("/v1/" + name)
                .asString();
        assertThat(tree(alone).path("workings")).isNotEmpty();
        assertThat(post(name, NDJSON, "?workings=true", example).asString()).isEqualTo(alone + "\n");
    }

    @ParameterizedTest
    @MethodSource("ofOneRow")
    void aRowIsAnsweredAsAQueryIs(String name) {
        var fields = Flat.all(LiveService.example(name));
        String alone = LiveService.lawful()
                .queryParams(fields)
                .queryParam("as", "csv")
                .get("/v1/" + name)
                .asString();
        String[] lines = alone.split("\r\n");
        String row = Csv.row(List.copyOf(fields.values()));
        String table = Csv.row(List.copyOf(fields.keySet())) + row + row;
        assertThat(post(name, CSV, "", table).asString())
                .isEqualTo(lines[0] + ",error\r\n" + lines[1] + ",\r\n" + lines[1] + ",\r\n");
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theBatchesInTheContractAreAnsweredAsAQueryIs(String name) {
        JsonNode contract = tree(LiveService.lawful().get("/openapi.json").asString());
        JsonNode body = contract.at("/paths").path("/v1/" + name).at("/post/requestBody/content");
        String lines = body.path(NDJSON).path("example").asText();
        String table = body.path(CSV).path("example").asText();
        String alone = LiveService.lawful()
                .queryParams(Flat.all(tree(lines)))
                .get("/v1/" + name)
                .asString();
        assertThat(post(name, NDJSON, "", lines).asString()).isEqualTo(alone + "\n");
        String verdict = tree(alone).path("verdict").asText();
        assertThat(post(name, CSV, "?pick=/verdict", table).asString())
                .isEqualTo("verdict,error\r\n" + verdict + ",\r\n");
    }

    @Test
    void answersKeepTheOrderAndBadLinesTheirPlaces() {
        String batch = IntStream.rangeClosed(1, 200)
                .mapToObj(i -> i % 10 == 0 ? "{\"current_a\":" : run(i))
                .collect(Collectors.joining("\n"));
        List<String> answers = post(WIRE, NDJSON, "?pick=/recommended/loss_w", batch)
                .asString()
                .lines()
                .toList();
        assertThat(answers).hasSize(200);
        for (int i = 1; i <= 200; i++) {
            JsonNode answer = tree(answers.get(i - 1));
            if (i % 10 == 0) {
                assertThat(answer.path("line").asInt()).isEqualTo(i);
                assertThat(answer.path("type").asText()).isEqualTo("/problems/malformed-body");
            } else {
                String alone = i % 37 != 0
                        ? null
                        : LiveService.lawful()
                                .body(run(i))
                                .queryParam("pick", "/recommended/loss_w")
                                .post("/v1/" + WIRE)
                                .asString();
                if (alone != null) {
                    assertThat(answer.path("recommended.loss_w").asText()).isEqualTo(alone);
                }
                assertThat(answer.has("line")).isFalse();
            }
        }
    }

    @Test
    void eachKindOfBadLineIsSaid() {
        String batch = String.join(
                "\n",
                run(-1),
                "{\"current_a\":5,\"colour\":1}",
                "[]",
                "{",
                run(28).replace("}", ",\"peak_current_a\":12}"),
                "{\"a\":\"" + "x".repeat(1_100_000) + "\"}",
                run(28));
        List<JsonNode> answers = post(WIRE, NDJSON, "", batch)
                .asString()
                .lines()
                .map(BatchHttpTest::tree)
                .toList();
        assertThat(answers.stream().map(a -> a.path("status").asInt(200)).toList())
                .containsExactly(400, 400, 400, 400, 422, 413, 200);
        assertThat(answers.get(0).at("/errors/0/at").asText()).isEqualTo("/current_a");
        assertThat(answers.get(4).at("/errors/0/at").asText()).isEqualTo("/peak_current_a");
        assertThat(answers.get(5).path("line").asInt()).isEqualTo(6);
        assertThat(answers.get(6).path("verdict").asText()).isEqualTo("attention");
    }

    @Test
    void eachKindOfBadRowIsSaid() {
        String table = "\ufeffcurrent_a;\n".replace(";", ",length_mm,supply_voltage_v,gauge")
                + "5,620,22.2,\n"
                + "-5,620,22.2,\n"
                + "\"5,5\",620,22.2,\n"
                + "5,620,22.2,,7\n"
                + "5,620,22.2,\"=1+1\"\n"
                + "\n"
                + "5,620,22.2,\"1\n4\"\n"
                + "5,620,22.2,14\n"
                + "5,\"620,22.2,14\n";
        List<String> rows =
                post(WIRE, CSV, "?pick=/verdict", table).asString().lines().toList();
        assertThat(rows)
                .containsExactly(
                        "verdict,error",
                        "attention,",
                        ",400 /current_a: current_a is -5 A: it must be at least 0.001 A",
                        ",\"400 /current_a: current_a is the text \"\"5,5\"\": write the decimal"
                                + " point as a dot and nothing between thousands, like 22.5\"",
                        ",400 cell 5 of the row stands under no name of the header",
                        rows.get(5),
                        rows.get(6),
                        "attention,",
                        rows.get(8));
        assertThat(rows.get(5)).startsWith(",").contains("422 /gauge");
        assertThat(rows.get(6)).startsWith(",").contains("422 /gauge");
        assertThat(rows.get(8)).startsWith(",").contains("400 ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "current_a,colour|/colour|unknown_field",
                "current_a,current_a|/current_a|repeated",
                "current_a,flight|/flight|unknown_field",
                "current_a,connectors.x.name|/connectors/x/name|unknown_field",
            })
    void aHeaderThatNamesNoFieldIsRefusedWhole(String header, String at, String code) {
        refused(CSV, "", header + "\n1,2\n")
                .statusCode(400)
                .body("errors[0].at", equalTo(at))
                .body("errors[0].code", equalTo(code));
    }

    @ParameterizedTest
    @ValueSource(strings = {"current_a;length_mm\n1;2\n", "current_a\tlength_mm\n1\t2\n"})
    void aTableWithOtherSignsThanCommasIsTold(String table) {
        refused(CSV, "", table).statusCode(400).body("detail", containsString("put commas"));
    }

    @Test
    void aTableMayBeEncodedAsSpreadsheetsDo() {
        byte[] table = "items.0.name,items.0.mass_g,items.0.arm_mm\nFl\u00fcgel,5,3\n"
                .getBytes(Charset.forName("windows-1252"));
        String name = LiveService.lawful()
                .contentType("text/csv; charset=\"Windows-1252\"")
                .queryParam("pick", "/moments/0/name")
                .body(table)
                .post("/v1/mass-balance")
                .asString();
        assertThat(name).isEqualTo("moments.0.name,error\r\nFl\u00fcgel,\r\n");
        String unsaid = LiveService.lawful()
                .contentType(CSV)
                .queryParam("pick", "/moments/0/name")
                .body(table)
                .post("/v1/mass-balance")
                .asString();
        assertThat(unsaid).contains(",400 the row is no text in UTF-8");
    }

    @Test
    void aTableInOtherLettersIsTold() {
        refused("text/csv; charset=utf-16", "", "current_a\n1\n")
                .statusCode(415)
                .body("detail", containsString("UTF-8"));
    }

    @Test
    void aPickToNowhereIsRefusedBeforeTheFirstLine() {
        refused(NDJSON, "?pick=/nowhere", run(1)).statusCode(422).body("errors[0].at", equalTo("/nowhere"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "html", "text"})
    void aBatchIsWrittenAsLinesOrRows(String as) {
        refused(NDJSON, "?as=" + as, run(1))
                .statusCode(406)
                .body("detail", containsString("application/x-ndjson (as=json)"));
    }

    @Test
    void linesMayBecomeRowsAndRowsLines() {
        String row = post(WIRE, NDJSON, "?as=csv&pick=/recommended/gauge&pick=/checked/gauge", run(28))
                .asString();
        String line = LiveService.lawful()
                .contentType(CSV)
                .accept(NDJSON)
                .queryParam("pick", "/recommended/gauge", "/checked/gauge")
                .body("current_a,length_mm,supply_voltage_v\n28,620,22.2\n")
                .post("/v1/" + WIRE)
                .asString();
        assertThat(row).isEqualTo("recommended.gauge,checked.gauge,error\r\n14,,\r\n");
        assertThat(line).isEqualTo("{\"recommended.gauge\":\"14\"}\n");
    }

    @Test
    void aTableOfAnswersBeginsWithTheCautionOnRequest() {
        String table = "current_a,length_mm,supply_voltage_v\n28,620,22.2\n";
        String usual = post(WIRE, CSV, "", table).asString();
        String cautioned = post(WIRE, CSV, "?cautions=true", table).asString();

        assertThat(usual).doesNotStartWith("#");
        assertThat(cautioned).startsWith("# " + Caution.AID + "\r\n# ").endsWith("\r\n" + usual);
    }

    @Test
    void aCellNeverBeginsAFormula() {
        String table = "items.0.name,items.0.mass_g,items.0.arm_mm\n"
                + "=1+1,5,-3\n"
                + "@a,5,-3\n"
                + "-a,5,-3\n"
                + "+a,5,-3\n";
        assertThat(post("mass-balance", CSV, "?pick=/moments/0/name&pick=/cg_arm_mm", table)
                        .asString())
                .isEqualTo("moments.0.name,cg_arm_mm,error\r\n"
                        + "'=1+1,-3.0,\r\n"
                        + "'@a,-3.0,\r\n"
                        + "'-a,-3.0,\r\n"
                        + "'+a,-3.0,\r\n");
    }

    @Test
    void anEmptyBatchIsAnsweredWithNothing() {
        // Unchecked, for the validator wants a body where there may be one.
        LiveService.unchecked()
                .contentType(NDJSON)
                .body("\n\n".getBytes(StandardCharsets.UTF_8))
                .post("/v1/" + WIRE)
                .then()
                .statusCode(200)
                .body(equalTo(""));
    }

    @Test
    void anEmptyTableIsRefused() {
        refused(CSV, "", "\n").statusCode(400).body("detail", equalTo("the body is empty"));
    }
}
