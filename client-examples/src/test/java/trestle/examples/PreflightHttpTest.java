package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example {@code preflight.sh} against the live service. */
class PreflightHttpTest {
    private static final Path SCRIPT = Path.of("shell", "preflight.sh").toAbsolutePath();

    @TempDir
    private Path folder;

    @BeforeEach
    void needItsTools() {
        Tool.need("bash", "curl", "jq");
    }

    @Test
    void theExampleAircraftDeservesAttention() throws IOException {
        ObjectNode example = LiveService.example("build-review");
        assertThat(LiveService.answer("build-review", example).path("verdict").asText())
                .isEqualTo("attention");

        Command.Outcome outcome = review(example.toString());

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).isEqualTo("attention\n");
        assertThat(outcome.exitCode()).isEqualTo(1);
    }

    @Test
    void whatStopsTheFlightIsPrintedWithItsPlace() throws IOException {
        ObjectNode heavy = LiveService.example("build-review");
        ((ObjectNode) heavy.at("/airframe/limits")).put("max_takeoff_mass_g", 1000);
        StringBuilder expected = new StringBuilder("stop\n");
        for (JsonNode finding : LiveService.answer("build-review", heavy).path("findings")) {
            if (finding.path("severity").asText().equals("stop")) {
                expected.append("  " + finding.path("message").asText());
                expected.append(" (" + finding.path("at").asText() + ")\n");
            }
        }
        assertThat(expected.toString()).contains("(/airframe/limits/max_takeoff_mass_g)\n");

        Command.Outcome outcome = review(heavy.toString());

        assertThat(outcome.out()).isEqualTo(expected.toString());
        assertThat(outcome.exitCode()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"fit, 0", "attention, 1", "stop, 2"})
    void theExitCodeIsTheVerdict(String verdict, int exitCode) throws IOException {
        String answer = """
                {"verdict": "%s", "findings": [
                  {"severity": "stop", "message": "The whole.", "at": ""},
                  {"severity": "note", "message": "A note.", "at": "/items"}]}\
                """.formatted(verdict);

        Command.Outcome outcome = answered(200, "application/json", answer);

        assertThat(outcome.exitCode()).isEqualTo(exitCode);
        assertThat(outcome.out()).isEqualTo(verdict + "\n  The whole. (the document as a whole)\n");
    }

    @Test
    void everyFaultIsPrintedWithItsPlace() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.at("/items/0")).remove("mass_g");
        ((ObjectNode) document.at("/packs/1")).put("serie", 2);

        Command.Outcome outcome = review(document.toString());

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("\n  /items/0/mass_g: ", "\n  /packs/1/serie: ");
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
        "200, '{\"verdict\": \"splendid\"}'",
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
        assertThat(outcome.err()).startsWith("usage: preflight.sh [DOCUMENT]\n");
    }

    @Test
    void theReadmesPipeChangesTheDocumentOnTheWay() throws IOException {
        ObjectNode windy = LiveService.example("build-review");
        ((ObjectNode) windy.path("mission")).put("headwind_m_per_s", 25);
        String verdict =
                LiveService.answer("build-review", windy).path("verdict").asText();
        Files.writeString(
                folder.resolve("mine.json"), LiveService.example("build-review").toString());

        Command.Outcome outcome = Command.of("bash", "-c", "jq '.mission.headwind_m_per_s = 25' mine.json | " + SCRIPT)
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
