package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example {@code plan_block.py} against the live service. */
class PlanBlockHttpTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** A line of the table of lines: number, flight, two places, length. */
    private static final Pattern LINE = Pattern.compile(
            "^ *(\\d+) +(\\d+|-) +-?\\d+\\.\\d{5} +-?\\d+\\.\\d{5} +-?\\d+\\.\\d{5} +-?\\d+\\.\\d{5} +(\\d+)$");

    /** Some 500 m by 600 m in the north of the example's block, drawn by itself. */
    private static final String BLOCK = "{\"type\": \"Polygon\", \"coordinates\": [[[8.215, 53.606], [8.223, 53.606],"
            + " [8.223, 53.611], [8.215, 53.611], [8.215, 53.606]]]}";

    @TempDir
    Path folder;

    @Test
    void theExamplesBlockIsPlannedAsItsReviewPlansIt() throws IOException {
        JsonNode review = LiveService.answer("build-review", LiveService.example("build-review"));
        JsonNode survey = review.path("survey_coverage");
        Path written = folder.resolve("lines.geojson");

        Command.Outcome outcome = plan("--geojson", written.toString());

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .startsWith("aircraft: fit, block: fit\n")
                .contains("flights needed: " + survey.path("flights_needed").asInt() + "\n")
                .contains("in the pack to the cutoff %.0f Wh (%.0f to %.0f Wh, eight of ten)"
                        .formatted(
                                review.at("/key_figures/usable_energy_wh").asDouble(),
                                review.at("/bands/usable_energy_wh/p10").asDouble(),
                                review.at("/bands/usable_energy_wh/p90").asDouble()))
                .contains("all flights together take %.0f Wh"
                        .formatted(survey.path("energy_wh").asDouble()))
                .contains("- " + survey.at("/cautions/0").asText());
        List<Integer> metres = lengths(outcome);
        assertThat(metres).hasSize(survey.path("lines").asInt());
        assertThat(metres.stream().mapToInt(Integer::intValue).sum() / 1000.0)
                .isCloseTo(survey.path("line_length_km").asDouble(), within(0.02));

        JsonNode features = MAPPER.readTree(written.toFile()).path("features");
        assertThat(features).hasSize(2 + metres.size());
        assertThat(features.path(0).at("/geometry/type").asText()).isEqualTo("Polygon");
        assertThat(features.path(1).at("/properties/name").asText()).isEqualTo("home");
        for (int i = 0; i < metres.size(); i++) {
            assertThat(features.path(2 + i).at("/geometry/coordinates"))
                    .isEqualTo(survey.at("/lines_geojson/coordinates/" + i));
            assertThat(features.path(2 + i).at("/properties/flight").asInt()).isEqualTo(1);
        }
    }

    @Test
    void aBlockOfOnesOwnIsFlownInPlaceOfTheDocuments() throws IOException {
        String feature = "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Feature\", \"properties\": {},"
                + " \"geometry\": " + BLOCK + "}]}";

        Command.Outcome outcome = plan(aircraft(LiveService.example("build-review")), block(feature));

        assertThat(outcome.err()).isEmpty();
        // 0.008° of longitude by 0.005° of latitude at 53.6085° north: 529.5 m by 556.5 m on WGS 84.
        assertThat(outcome.out()).contains("block  0.29 km²");
    }

    /** A pack so small that the likely power needs fewer flights than both bad ends of the bands. */
    @Test
    void moreFlightsAreNeededAtTheBadEndOfTheBands() throws IOException {
        ObjectNode aircraft = LiveService.example("build-review");
        ((ObjectNode) aircraft.path("survey")).put("side_overlap_percent", 85).put("overhead_energy_wh", 100);

        Command.Outcome outcome = plan(aircraft(aircraft));

        int likely = after(outcome, "flights needed: ");
        int high = after(outcome, "nine of ten stay below: ");
        int worst = after(outcome, "low end of its band too: ");
        assertThat(likely).isGreaterThan(1).isLessThanOrEqualTo(high);
        assertThat(worst).isGreaterThan(likely).isGreaterThanOrEqualTo(high);
        assertThat(outcome.out()).contains("flight " + likely + ": lines ");
    }

    @Test
    void aLineThatNoFlightReachesIsOfNoFlight() throws IOException {
        ObjectNode aircraft = LiveService.example("build-review");
        ((ObjectNode) aircraft.path("survey")).put("overhead_energy_wh", 500);
        Path written = folder.resolve("lines.geojson");

        Command.Outcome outcome = plan(aircraft(aircraft), "--geojson", written.toString());

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).contains("block: stop", "flights needed: cannot be flown so");
        JsonNode features = MAPPER.readTree(written.toFile()).path("features");
        assertThat(features.path(features.size() - 1).at("/properties/flight").isNull())
                .isTrue();
    }

    @Test
    void whatIsNoBlockIsSaid() throws IOException {
        String aircraft = aircraft(LiveService.example("build-review"));

        Command.Outcome point = plan(aircraft, block("{\"type\": \"Point\", \"coordinates\": [8.2, 53.6]}"));
        assertThat(point.exitCode()).isEqualTo(3);
        assertThat(point.err()).contains("it is a Point: a Polygon of GeoJSON is expected");

        Command.Outcome crossed = plan(
                aircraft,
                block("{\"type\": \"Polygon\", \"coordinates\": [[[8.21, 53.60], [8.22, 53.61], [8.22, 53.60],"
                        + " [8.21, 53.61], [8.21, 53.60]]]}"));
        assertThat(crossed.exitCode()).isEqualTo(3);
        assertThat(crossed.err()).contains("/survey/area");

        Command.Outcome without = plan(folder.resolve("nowhere.json").toString());
        assertThat(without.exitCode()).isEqualTo(3);
        assertThat(without.err()).contains("cannot use").doesNotContain("Traceback");

        Command.Outcome noService = Python.run(LiveService.urlOfNobody(), "plan_block.py");
        assertThat(noService.exitCode()).isEqualTo(4);
        assertThat(noService.err()).startsWith("cannot reach Trestle at ");
    }

    @Test
    void anAircraftWithoutACameraIsToldWhatToGive() throws IOException {
        ObjectNode aircraft = LiveService.example("build-review");
        aircraft.remove("survey");

        Command.Outcome outcome = plan(aircraft(aircraft), block(BLOCK));

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("give /survey with the camera");
    }

    private static Command.Outcome plan(String... arguments) {
        return Python.run(LiveService.url(), "plan_block.py", arguments);
    }

    private String aircraft(JsonNode document) throws IOException {
        return Files.writeString(folder.resolve("aircraft.json"), document.toString())
                .toString();
    }

    private String block(String geojson) throws IOException {
        return Files.writeString(folder.resolve("block.geojson"), geojson).toString();
    }

    private static List<Integer> lengths(Command.Outcome outcome) {
        List<Integer> metres = new ArrayList<>();
        outcome.out().lines().map(LINE::matcher).filter(it -> it.matches()).forEach(it -> {
            metres.add(Integer.valueOf(it.group(3)));
            assertThat(Integer.parseInt(it.group(1))).isEqualTo(metres.size());
        });
        return metres;
    }

    private static int after(Command.Outcome outcome, String words) {
        return outcome.out()
                .lines()
                .filter(line -> line.contains(words))
                .map(line -> Integer.valueOf(line.substring(line.indexOf(words) + words.length())))
                .findFirst()
                .orElseThrow(() -> new AssertionError(outcome));
    }
}
