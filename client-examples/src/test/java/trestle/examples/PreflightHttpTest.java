package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example {@code preflight.sh} against the live service. */
class PreflightHttpTest {
    private static final Path SCRIPT = Path.of("shell", "preflight.sh").toAbsolutePath();

    private static final List<String> VERDICTS = List.of("fit", "attention", "stop");
    private static final String WHOLE = "the document as a whole";
    private static final String AID =
            "\nAn aid, not an approval: local rules, makers' data and licensed practice come first.\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void needItsTools() {
        Tool.need("bash", "curl", "jq");
    }

    @Test
    void theExampleAircraftGetsItsVerdictAndWhatThatRestsOn() throws IOException {
        ObjectNode example = LiveService.example("build-review");
        JsonNode answer = LiveService.answer("build-review", example);
        String verdict = answer.path("verdict").asText();

        Command.Outcome outcome = review(example.toString());

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).startsWith(verdict + "\n").contains(AID);
        for (JsonNode check : answer.path("checks")) {
            if (check.path("outcome").asText().equals("not_judged")) {
                assertThat(outcome.out())
                        .contains(
                                check.path("about").asText(),
                                check.at("/give/0").asText());
            }
        }
        assertThat(outcome.exitCode()).isEqualTo(VERDICTS.indexOf(verdict));
    }

    @Test
    void everyCheckAndCautionIsPrintedOnRequest() throws IOException {
        ObjectNode example = LiveService.example("build-review");
        JsonNode answer = LiveService.answer("build-review", example);

        Command.Outcome outcome = preflight(LiveService.url())
                .with("--all", aircraft(example.toString()))
                .run();

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out().lines().filter(line -> line.startsWith("  passed: ")))
                .hasSize((int) answer.path("checks").findValuesAsText("outcome").stream()
                        .filter("passed"::equals)
                        .count());
        for (JsonNode caution : answer.path("cautions")) {
            assertThat(outcome.out()).contains("  - " + caution.asText() + "\n");
        }
    }

    @Test
    void theReasonsArePrintedWithTheirPlaces() throws IOException {
        ObjectNode heavy = LiveService.example("build-review");
        ((ObjectNode) heavy.at("/airframe/limits")).put("max_takeoff_mass_g", 1000);
        StringBuilder expected = new StringBuilder("stop\n");
        for (JsonNode finding : LiveService.answer("build-review", heavy).path("findings")) {
            if (!finding.path("severity").asText().equals("note")) {
                expected.append("  " + finding.path("severity").asText() + ": ");
                expected.append(finding.path("message").asText());
                String at = finding.path("at").asText();
                expected.append(" (" + (at.isEmpty() ? WHOLE : at) + ")\n");
            }
        }
        assertThat(expected.toString()).contains("(/airframe/limits/max_takeoff_mass_g)\n");

        Command.Outcome outcome = review(heavy.toString());

        assertThat(outcome.out()).startsWith(expected.toString());
        assertThat(outcome.exitCode()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"fit, 0", "attention, 1", "stop, 2"})
    void theExitCodeIsTheVerdict(String verdict, int exitCode) throws IOException {
        String answer = """
                {"verdict": "%s", "findings": [
                  {"severity": "stop", "message": "The whole.", "at": ""},
                  {"severity": "note", "message": "A note.", "at": "/items"}],
                 "checks": [
                  {"about": "mass", "outcome": "passed", "value": 1, "limit": 2, "margin_percent": 50},
                  {"about": "heat", "outcome": "stop"},
                  {"about": "wires", "outcome": "not_judged", "give": ["/wiring"]},
                  {"about": "leads", "outcome": "not_judged", "give": ["/wiring"]}],
                 "cautions": ["Mind the propeller."]}\
                """.formatted(verdict);

        Command.Outcome outcome = answered(200, "application/json", answer);

        assertThat(outcome.exitCode()).isEqualTo(exitCode);
        assertThat(outcome.out()).isEqualTo(verdict + """

                          stop: The whole. (the document as a whole)
                          not judged: leads; wires (give /wiring)
                        1 checks passed, 1 not passed, 2 not judged.%sEvery check and caution: preflight.sh --all
                        """.formatted(AID));
    }

    @Test
    void everyFaultIsPrintedWithItsPlace() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.at("/items/0")).remove("mass_g");
        ((ObjectNode) document.at("/packs/0")).put("serie", 2);

        Command.Outcome outcome = review(document.toString());

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("\n  /items/0/mass_g: ", "\n  /packs/0/serie: ");
    }

    @Test
    void aDocumentThatIsNoJsonIsToldWhere() throws IOException {
        Command.Outcome outcome = review("{\"items\": [}");

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("column 12");
    }

    @Test
    void aDocumentThatIsNotThereIsNamed() {
        Command.Outcome outcome =
                preflight(LiveService.url()).with("no-such.json").run();

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).isEqualTo("cannot read no-such.json\n");
    }

    @Test
    void aServiceThatIsNotThereIsOneClearLine() throws IOException {
        String url = LiveService.urlOfNobody();

        Command.Outcome outcome = preflight(url).with(aircraft("{}")).run();

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines()).singleElement().asString().startsWith("cannot reach Trestle at " + url);
    }

    @ParameterizedTest
    @CsvSource({
        "404, <html>not here</html>",
        "400, <html>not so</html>",
        "400, {}",
        "200, <html>hello</html>",
        "200, []",
        "200, '{\"verdict\": \"splendid\", \"checks\": []}'",
        "200, '{\"verdict\": \"fit\"}'",
        "503, '{\"title\": \"Too much work\", \"status\": 503}'"
    })
    void whatIsNoReviewIsNotTakenForOne(int status, String body) throws IOException {
        Command.Outcome outcome = answered(status, "text/plain", body);

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"--colour,", "one.json, two.json"})
    void aWrongCommandLineIsNotMistakenForAStop(String first, String second) {
        Command command = preflight("http://127.0.0.1:1").with(first);
        Command.Outcome outcome = (second == null ? command : command.with(second)).run();

        assertThat(outcome.exitCode()).isEqualTo(64);
        assertThat(outcome.err()).startsWith("usage: preflight.sh [--all] [DOCUMENT]\n");
    }

    @Test
    void theReadmesPipeChangesTheDocumentOnTheWay() throws IOException {
        ObjectNode windy = LiveService.example("build-review");
        ((ObjectNode) windy.path("flight")).put("headwind_m_per_s", 25);
        String verdict =
                LiveService.answer("build-review", windy).path("verdict").asText();
        Files.writeString(
                folder.resolve("mine.json"), LiveService.example("build-review").toString());

        Command.Outcome outcome = Command.of("bash", "-c", "jq '.flight.headwind_m_per_s = 25' mine.json | " + SCRIPT)
                .in(folder)
                .where("TRESTLE_URL", LiveService.url())
                .run();

        assertThat(outcome.out()).startsWith(verdict + "\n");
    }

    private Command.Outcome review(String document) throws IOException {
        return preflight(LiveService.url()).with(aircraft(document)).run();
    }

    private Command.Outcome answered(int status, String mediaType, String body) throws IOException {
        try (CannedService service = CannedService.answering(status, mediaType, body)) {
            return preflight(service.url()).with(aircraft("{}")).run();
        }
    }

    private String aircraft(String document) throws IOException {
        return Files.writeString(folder.resolve("aircraft.json"), document).toString();
    }

    private static Command preflight(String url) {
        return Command.of(SCRIPT.toString()).where("TRESTLE_URL", url);
    }
}
