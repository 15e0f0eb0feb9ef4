package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example {@code compare.py} against the live service. */
class CompareHttpTest {
    private static final String DIFFERENCES = "Differences in the documents: ";

    @TempDir
    Path folder;

    private final ObjectNode before = LiveService.example("build-review");

    @Test
    void anAircraftIsNotOtherThanItself() throws IOException {
        Command.Outcome outcome = compare(before);

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .startsWith("Verdict: fit -> fit\n")
                .contains(DIFFERENCES + "0\n", "Checks that come out otherwise: 0\n")
                .doesNotContain("  apart");
    }

    /** Everything behind an item that was put in has another number, and is no difference for that. */
    @Test
    void anItemPutInIsOneDifference() throws IOException {
        ObjectNode now = before.deepCopy();
        ((ArrayNode) now.path("items"))
                .insertObject(0)
                .put("name", "ballast in the nose")
                .put("mass_g", 400)
                .put("arm_mm", 900);
        JsonNode was = LiveService.answer("build-review", before);
        JsonNode is = LiveService.answer("build-review", now);

        Command.Outcome outcome = compare(now);

        assertThat(outcome.out())
                .contains(DIFFERENCES + "1\n", "  /items/0 (ballast in the nose): not given -> {\"name\": ")
                .contains("Verdict: " + was.path("verdict").asText() + " -> "
                        + is.path("verdict").asText());
        String mass = line(outcome, "total_mass_g");
        assertThat(mass.split(" +"))
                .startsWith(
                        "",
                        "total_mass_g",
                        whole(was.at("/key_figures/total_mass_g")),
                        "->",
                        whole(is.at("/key_figures/total_mass_g")));
        assertThat(outcome.out()).contains("airspeed at release over the stall speed, /flight/launch: passed -> ");
    }

    @Test
    void aPartTakenAwayLeavesItsChecksWithoutAPartner() throws IOException {
        ObjectNode now = before.deepCopy();
        now.remove("charging");
        // 16 written as 16.0 is no difference.
        ObjectNode flight = (ObjectNode) now.path("flight");
        flight.put("airspeed_m_per_s", flight.path("airspeed_m_per_s").asDouble());

        Command.Outcome outcome = compare(now, "--fields");

        assertThat(outcome.out())
                .contains(DIFFERENCES + "1\n", "  /charging: {")
                .contains("the charge, /charging: passed -> not judged\n")
                .contains("power of the charger, /charging/charger/max_power_w: passed -> not there\n")
                .contains("Other fields of the reviews that differ: ", "  /pack_charge: {");
    }

    @Test
    void bandsThatLieApartAreMarked() throws IOException {
        ObjectNode now = before.deepCopy();
        ((ObjectNode) now.at("/packs/0"))
                .put("parallel", before.at("/packs/0/parallel").asInt() + 1);

        Command.Outcome outcome = compare(now);

        JsonNode was = LiveService.answer("build-review", before).path("bands");
        JsonNode is = LiveService.answer("build-review", now).path("bands");
        assertThat(outcome.out().lines().filter(it -> it.endsWith("  apart")))
                .isNotEmpty()
                .allSatisfy(it -> {
                    String name = it.trim().split(" ")[0];
                    assertThat(was.at("/" + name + "/p90").asDouble()
                                            < is.at("/" + name + "/p10").asDouble()
                                    || is.at("/" + name + "/p90").asDouble()
                                            < was.at("/" + name + "/p10").asDouble())
                            .as(name)
                            .isTrue();
                });
    }

    @Test
    void whichOfTheTwoIsWrongIsSaid() throws IOException {
        ObjectNode now = before.deepCopy();
        now.put("packs", "no");

        Command.Outcome refused = compare(now);
        assertThat(refused.exitCode()).isEqualTo(3);
        assertThat(refused.err()).contains("now.json: ", "  /packs: packs must be a list");

        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"packs\": ");
        Command.Outcome unread = Python.run(LiveService.url(), "compare.py", broken.toString(), broken.toString());
        assertThat(unread.exitCode()).isEqualTo(3);
        assertThat(unread.err()).contains("broken.json: not JSON: ").doesNotContain("Traceback");

        Path fine = Files.writeString(folder.resolve("fine.json"), before.toString());
        Command.Outcome alone = Python.run(LiveService.urlOfNobody(), "compare.py", fine.toString(), fine.toString());
        assertThat(alone.exitCode()).isEqualTo(4);
        assertThat(alone.err()).startsWith("cannot reach Trestle at ");
    }

    private Command.Outcome compare(JsonNode now, String... options) throws IOException {
        String first = Files.writeString(folder.resolve("before.json"), before.toString())
                .toString();
        String second =
                Files.writeString(folder.resolve("now.json"), now.toString()).toString();
        List<String> arguments = new ArrayList<>(List.of(options));
        arguments.addAll(List.of(first, second));
        return Python.run(LiveService.url(), "compare.py", arguments.toArray(String[]::new));
    }

    private static String line(Command.Outcome outcome, String name) {
        return outcome.out()
                .lines()
                .filter(it -> it.startsWith("  " + name + " "))
                .findFirst()
                .orElseThrow();
    }

    private static String whole(JsonNode number) {
        return String.format(Locale.ROOT, "%.0f", number.asDouble());
    }
}
