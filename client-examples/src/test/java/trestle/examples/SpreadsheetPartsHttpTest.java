package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheets of one question each: charging, survey and loads. */
class SpreadsheetPartsHttpTest {
    @TempDir
    private static Path unchangedFolder;

    private static Spreadsheet unchanged;

    @TempDir
    private Path folder;

    @BeforeAll
    static void open() throws IOException {
        unchanged = Spreadsheet.opened(unchangedFolder, LiveService.url());
    }

    /** Charging, survey and loads: values, every check and every caution, each beside its question. */
    @ParameterizedTest
    @MethodSource("parts")
    void whatJoinedTheReviewIsAnsweredToo(String sheet, String answered, Map<String, String> shown) throws IOException {
        String question = sheet + ".N3";
        assertThat(URI.create(unchanged.text(question)).getPath()).isEqualTo("/v1/" + answered);
        ObjectNode answer = unchanged.answerTo(question);

        assertThat(unchanged.text(sheet + ".F6"))
                .isEqualTo(answer.path("verdict").asText());
        shown.forEach((cell, pointer) -> Shown.assertShows(unchanged, sheet + "." + cell, answer, pointer));
        Shown.assertLists(unchanged, sheet, "I", "J", "L", answer);
        JsonNode cautions = answer.path("cautions");
        assertThat(cautions).isNotEmpty();
        int first = sheet.equals("Loads") ? 46 : 44;
        for (int i = 0; i < cautions.size(); i++) {
            assertThat(unchanged.text(sheet + ".A" + (first + i)))
                    .isEqualTo(cautions.get(i).asText());
        }
        assertThat(unchanged.text(sheet + ".A3")).startsWith("An aid, not an approval");
        assertThat(unchanged.text(question).length() + 60).isLessThan(2048);
    }

    private static List<Arguments> parts() {
        return List.of(
                Arguments.of(
                        "Charging",
                        "pack-charge",
                        Map.of("F8", "/time_to_full_h", "F9", "/limited_by", "F15", "/supply/share_used_percent")),
                Arguments.of(
                        "Survey",
                        "survey-coverage",
                        Map.of("F8", "/lines", "F15", "/energy_wh", "F17", "/flights_needed_at_high_power")),
                Arguments.of(
                        "Loads",
                        "airframe-loads",
                        Map.of("F9", "/limit_load_factor", "F11", "/weakest/part", "F13", "/weakest/reserve_factor")));
    }

    /** What two sheets share is typed once. */
    @Test
    void massWingCellsAndPowerFollowTheOtherSheets() throws IOException {
        Spreadsheet opened = Spreadsheet.opened(
                folder,
                LiveService.url(),
                "Balance.B22=250",
                "Balance.A22=ballast",
                "Balance.D22=300",
                "Endurance.B18=4,2",
                "Endurance.B26=17");

        double mass = unchanged.number("Balance.I8") + 250;
        assertThat(opened.question("Loads.N3").path("takeoff_mass_g").asDouble())
                .isCloseTo(mass, within(1e-6));
        assertThat(opened.question("Charging.N3")
                        .at("/segments/0/cell/capacity_ah")
                        .asDouble())
                .isEqualTo(4.2);
        JsonNode flown = opened.answerTo("Endurance.I2");
        JsonNode survey = opened.question("Survey.N3");
        assertThat(survey.path("airspeed_m_per_s").asDouble()).isEqualTo(17);
        assertThat(survey.at("/energy/cruise_power_w").asDouble())
                .isCloseTo(flown.at("/at_airspeed/power_w").asDouble(), within(1e-6));
        assertThat(survey.at("/energy/usable_energy_wh").asDouble())
                .isCloseTo(flown.at("/energy/available_wh").asDouble(), within(1e-6));
        assertThat(opened.question("Loads.N3").at("/wing/panels")).hasSize(2);
    }

    /** A cell that is cleared is named where it must be given; another one leaves its check not judged. */
    @Test
    void aClearedCellIsNamed() throws IOException {
        Spreadsheet parts = Spreadsheet.opened(folder, LiveService.url(), "Charging.B9=", "Survey.B12=", "Loads.B8=");

        assertThat(parts.isSound()).as("no cell shows an error of its own").isTrue();
        assertThat(parts.text("Charging.F6")).isEqualTo("refused");
        assertThat(parts.text("Charging.E18")).startsWith("#ERR 400 ").contains("capacity_ah");
        assertThat(parts.text("Survey.J8")).isEqualTo("not judged");
        assertThat(parts.text("Survey.L8")).isEqualTo("/camera/exposure_s");
        assertThat(parts.text("Loads.E19")).startsWith("#ERR 400 ").contains("root_chord_mm");

        Spreadsheet others = Spreadsheet.opened(
                folder, LiveService.url(), "Balance.B31=", "Endurance.B5=6300", "Endurance.B8=", "Wires.C7=");

        assertThat(others.isSound()).as("no cell shows an error of its own").isTrue();
        assertThat(others.text("Balance.E3")).as("the service is not blamed").isEqualTo("answers");
        assertThat(others.text("Balance.H19")).startsWith("#ERR 400 ").contains("root_leading_edge_arm_mm");
        assertThat(others.text("Endurance.F5")).isEqualTo("refused");
        assertThat(others.text("Wires.R7")).startsWith("#ERR 400 ").contains("length_mm");
    }

    /** As many items as an aircraft may have here, over both sheets, and one of them without its mass. */
    @Test
    void sixtyItemsCount() throws IOException {
        int first = LiveService.example("mass-balance").path("items").size();
        List<String> entries = new ArrayList<>();
        for (int i = 0; i < 60 - first; i++) {
            String sheet = i < 16 - first ? "Balance." : "Items.";
            int row = i < 16 - first ? 7 + first + i : 6 + i - (16 - first);
            entries.addAll(
                    List.of(sheet + "A" + row + "=part " + i, sheet + "B" + row + "=2,5", sheet + "D" + row + "=600"));
        }
        Spreadsheet opened = Spreadsheet.opened(folder, LiveService.url(), entries.toArray(String[]::new));

        assertThat(opened.isSound()).isTrue();
        assertThat(opened.question("Balance.L3").path("items")).hasSize(60);
        assertThat(opened.number("Balance.I8"))
                .isCloseTo(unchanged.number("Balance.I8") + 2.5 * (60 - first), within(1e-6));
        assertThat(opened.text("Balance.L4")).endsWith(" characters, more than Excel takes");

        entries.removeIf(entry -> entry.startsWith("Items.B49="));
        Spreadsheet lacking = Spreadsheet.opened(folder, LiveService.url(), entries.toArray(String[]::new));

        assertThat(lacking.text("Balance.I7")).isEqualTo("refused");
        assertThat(lacking.text("Balance.H19")).startsWith("#ERR 400 /items/59/mass_g: ");
    }
}
