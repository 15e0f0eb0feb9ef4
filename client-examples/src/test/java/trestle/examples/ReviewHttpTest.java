package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example {@code review.py} against the live service. */
class ReviewHttpTest {
    private static final List<String> VERDICTS = List.of("fit", "attention", "stop");

    @TempDir
    private Path folder;

    @Test
    void theExampleAircraftIsReviewed() {
        Command.Outcome outcome = Python.run(LiveService.url(), "review.py");

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .startsWith("Verdict: ")
                .contains("take-off mass", "usable energy", "stall speed", "m/s")
                .contains(names(LiveService.example("build-review").path("wiring")))
                .contains("climb", "cruise", "loiter", "descent")
                .contains("Wh available")
                .contains("An aid, not an approval");
        assertThat(outcome.out())
                .containsPattern("static thrust +[0-9.]+ +N +[0-9.]+ to [0-9.]+\n")
                .contains("Estimated: measure these first");
    }

    @Test
    void everyCheckIsPrintedOnRequest() {
        JsonNode answer = LiveService.answer("build-review", LiveService.example("build-review"));

        Command.Outcome outcome = Python.run(LiveService.url(), "review.py", "--checks");

        assertThat(outcome.err()).isEmpty();
        String printed = unwrapped(outcome.out());
        for (JsonNode check : answer.path("checks")) {
            assertThat(printed).contains(check.path("about").asText());
        }
        assertThat(outcome.out()).doesNotContain("more passed");
    }

    @Test
    void whatWasNotJudgedIsNamedWithWhatToGiveAndNeverAmongWhatPassed() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.path("airframe")).remove("limits");
        JsonNode answer = LiveService.answer("build-review", document);

        String printed = unwrapped(review(document.toString()).out());

        String notJudged = printed.substring(printed.indexOf("Not judged"), printed.indexOf("Key figures"));
        for (JsonNode check : answer.path("checks")) {
            if (check.path("outcome").asText().equals("not_judged")) {
                assertThat(notJudged)
                        .contains(check.path("about").asText())
                        .contains("give " + check.at("/give/0").asText());
            }
        }
        assertThat(notJudged).contains("give /airframe/limits");
    }

    @Test
    void aReaderWhoGoesAwayIsNoFault() {
        Tool.need("bash", "python3");
        Command.Outcome outcome = Command.of("bash", "-c", "python3 python/review.py --checks | head -1")
                .where("TRESTLE_URL", LiveService.url())
                .run();

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).startsWith("Verdict: ").hasLineCount(1);
    }

    private static List<String> names(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(entry -> entry.path("name").asText())
                .toList();
    }

    @Test
    void theExitCodeAndTheFindingsAreThoseOfTheService() {
        JsonNode answer = LiveService.answer("build-review", LiveService.example("build-review"));
        Command.Outcome outcome = Python.run(LiveService.url(), "review.py");

        String verdict = answer.path("verdict").asText();
        assertThat(outcome.exitCode()).isEqualTo(VERDICTS.indexOf(verdict));
        assertThat(outcome.out()).contains("Verdict: " + verdict.toUpperCase(Locale.ROOT));
        for (JsonNode finding : answer.path("findings")) {
            assertThat(unwrapped(outcome.out()))
                    .contains(finding.path("message").asText());
        }
    }

    @Test
    void jsonIsTheWholeAnswer() throws IOException {
        Command.Outcome outcome = Python.run(LiveService.url(), "review.py", "--json");

        ObjectMapper mapper = new ObjectMapper();
        assertThat(mapper.readTree(outcome.out()))
                .isEqualTo(LiveService.answer("build-review", LiveService.example("build-review")));
    }

    @Test
    void anOwnAircraftOverItsLimitStops() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.at("/airframe/limits")).put("max_takeoff_mass_g", 1000);

        Command.Outcome outcome = review(document.toString());

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).startsWith("Verdict: STOP").contains("at /airframe/limits/max_takeoff_mass_g");
    }

    @Test
    void everyFaultOfABrokenDocumentIsPrintedWithItsPointer() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.at("/items/0")).remove("mass_g");
        ((ObjectNode) document.at("/packs/0")).put("serie", 2);

        Command.Outcome outcome = review(document.toString());

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("  /items/0/mass_g: ", "  /packs/0/serie: ");
    }

    @Test
    void aDocumentThatContradictsItselfIsAProblem() throws IOException {
        ObjectNode document = LiveService.example("build-review");
        ((ObjectNode) document.path("airframe")).put("target_percent_mac", 30);

        Command.Outcome outcome = review(document.toString());

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("(422, ", "  /airframe/target_percent_mac: ");
    }

    @Test
    void aDocumentThatIsNoJsonIsToldWhere() throws IOException {
        Command.Outcome outcome = review("{\"items\": [}");

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("(400, ", "column 12");
    }

    @Test
    void aDocumentThatIsNotThereIsNamed() {
        Command.Outcome outcome = Python.run(LiveService.url(), "review.py", "--document", "no-such.json");

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).isEqualTo("cannot read no-such.json: No such file or directory\n");
    }

    @Test
    void aServiceThatIsNotThereIsOneClearLine() throws IOException {
        String url = LiveService.urlOfNobody();

        Command.Outcome outcome = Python.run(Map.of(), "review.py", "--url", url);

        assertThat(outcome.exitCode()).isEqualTo(4);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines()).singleElement().asString().startsWith("cannot reach Trestle at " + url);
    }

    @Test
    void theOptionOverridesTheEnvironment() throws IOException {
        Command.Outcome outcome = Python.run(LiveService.urlOfNobody(), "review.py", "--url", LiveService.url() + "/");

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out()).startsWith("Verdict: ");
    }

    private Command.Outcome review(String document) throws IOException {
        Path file = Files.writeString(folder.resolve("aircraft.json"), document);
        return Python.run(LiveService.url(), "review.py", file.toString());
    }

    /** The text without the line breaks and the indents that fit it to the terminal. */
    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
