package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The spreadsheet, recalculated by LibreOffice against the live service. */
class SpreadsheetHttpTest {
    private static final String REFUSED = "refused";

    /** What the cells begin with. */
    private static final JsonNode EXAMPLE = LiveService.example("mass-balance");

    /** Rows of the sheet Wires that hold a run. */
    private static final int FIRST_RUN = 6;

    private static final int RUNS = 5;

    /** Cells of the sheet Balance that show a number, and where in the answer it comes from. */
    private static final Map<String, String> BALANCE = Map.of(
            "Balance.I8", "/total_mass_g",
            "Balance.I9", "/cg_arm_mm",
            "Balance.I10", "/cg_percent_mac",
            "Balance.I11", "/static_margin_percent",
            "Balance.I12", "/neutral_point_arm_mm",
            "Balance.I13", "/mean_aerodynamic_chord_mm",
            "Balance.I14", "/wing_area_dm2",
            "Balance.I15", "/wing_span_mm",
            "Balance.I16", "/wing_loading_g_per_dm2");

    private static final Map<String, String> ENDURANCE = Map.ofEntries(
            Map.entry("Endurance.F6", "/stall_speed_m_per_s"),
            Map.entry("Endurance.F7", "/best_endurance/endurance_h"),
            Map.entry("Endurance.F8", "/best_endurance/airspeed_m_per_s"),
            Map.entry("Endurance.F9", "/best_endurance/power_w"),
            Map.entry("Endurance.F10", "/best_range/ground_range_km"),
            Map.entry("Endurance.F11", "/best_range/airspeed_m_per_s"),
            Map.entry("Endurance.F12", "/at_airspeed/endurance_h"),
            Map.entry("Endurance.F13", "/at_airspeed/ground_range_km"),
            Map.entry("Endurance.F14", "/at_airspeed/power_w"),
            Map.entry("Endurance.F15", "/at_airspeed/current_a"),
            Map.entry("Endurance.F16", "/radius_of_action_km"),
            Map.entry("Endurance.F17", "/energy/available_wh"));

    /** Columns of the sheet Wires that show a number. */
    private static final Map<String, String> WIRE = Map.of(
            "I", "/recommended/gauge",
            "J", "/recommended/area_mm2",
            "K", "/recommended/drop_v",
            "L", "/recommended/drop_percent",
            "M", "/recommended/conductor_temperature_c",
            "N", "/recommended/loss_w",
            "O", "/recommended/mass_g");

    @TempDir
    private static Path unchangedFolder;

    private static Spreadsheet unchanged;

    @TempDir
    private Path folder;

    @BeforeAll
    static void open() throws IOException {
        unchanged = Spreadsheet.opened(unchangedFolder, LiveService.url());
    }

    @Test
    void theFileIsWhatItsScriptWrites() throws IOException {
        Tool.need("python3");
        Path written = folder.resolve("written.fods");

        Command.Outcome outcome = Command.of("python3", "make.py", written.toString())
                .in(Spreadsheet.HOME)
                .run();

        assertThat(outcome.err()).isEmpty();
        assertThat(written).hasSameTextualContentAs(Spreadsheet.HOME.resolve("aircraft.fods"));
    }

    @Test
    void everyCellShowsWhatTheServiceAnswers() throws IOException {
        assertThat(unchanged.isSound()).isTrue();
        assertThat(unchanged.text("Balance.E3")).isEqualTo("answers");

        ObjectNode asked = unchanged.question("Balance.L3");
        assertThat(names(asked.path("items")))
                .isEqualTo(names(EXAMPLE.path("items")))
                .anyMatch(name -> name.contains(" "));
        assertThat(asked.at("/wing/panels")).hasSameSizeAs(EXAMPLE.at("/wing/panels"));
        ObjectNode balance = unchanged.answerTo("Balance.L3");
        Shown.assertShows(unchanged, BALANCE, balance);
        assertThat(unchanged.text("Balance.I7"))
                .isEqualTo(balance.path("verdict").asText());
        assertThat(unchanged.text("Balance.H19"))
                .isEqualTo(balance.at("/findings/0/message").asText())
                .isNotEmpty();

        ObjectNode endurance = unchanged.answerTo("Endurance.I2");
        assertThat(unchanged.question("Endurance.I2").path("takeoff_mass_g").asDouble())
                .isCloseTo(balance.path("total_mass_g").asDouble(), within(1e-6));
        Shown.assertShows(unchanged, ENDURANCE, endurance);
        assertThat(unchanged.text("Endurance.F5"))
                .isEqualTo(endurance.path("verdict").asText());

        for (int row = FIRST_RUN; row < FIRST_RUN + RUNS; row++) {
            ObjectNode wire = unchanged.answerTo("Wires.S" + row);
            for (Map.Entry<String, String> column : WIRE.entrySet()) {
                Shown.assertShows(unchanged, "Wires." + column.getKey() + row, wire, column.getValue());
            }
            assertThat(unchanged.text("Wires.P" + row))
                    .isEqualTo(wire.path("verdict").asText());
            assertThat(unchanged.number("Wires.Q" + row))
                    .isEqualTo(
                            outcomes(wire).stream().filter("not_judged"::equals).count());
        }
    }

    @Test
    void whatWasJudgedAndWhatWasNotIsListed() throws IOException {
        Shown.assertLists(unchanged, "Checks", "A", "B", "D", unchanged.answerTo("Balance.L3"));
        Shown.assertLists(unchanged, "Checks", "F", "G", "I", unchanged.answerTo("Endurance.I2"));
        Shown.assertLists(unchanged, "Checks", "K", "L", "N", unchanged.answerTo("Wires.S" + FIRST_RUN));
        List<String> balance = outcomes(unchanged.answerTo("Balance.L3"));
        assertThat(unchanged.text("Balance.H17"))
                .isEqualTo("Checks: %d passed, %d not passed, %d not judged"
                        .formatted(
                                balance.stream().filter("passed"::equals).count(),
                                balance.stream()
                                        .filter(List.of("attention", "stop")::contains)
                                        .count(),
                                balance.stream().filter("not_judged"::equals).count()));
    }

    @Test
    void theCautionsAreThoseOfTheAnswers() throws IOException {
        for (String sheet : List.of("Balance.A4", "Wires.A3", "Endurance.A3", "Checks.A3", "Cautions.A3")) {
            assertThat(unchanged.text(sheet)).startsWith("An aid, not an approval");
        }
        JsonNode cautions = unchanged.answerTo("Balance.L3").path("cautions");
        assertThat(cautions).isNotEmpty();
        for (int i = 0; i < cautions.size(); i++) {
            assertThat(unchanged.text("Cautions.A" + (6 + 3 * i)))
                    .isEqualTo(cautions.get(i).asText());
        }
    }

    private static List<String> names(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(entry -> entry.path("name").asText())
                .toList();
    }

    private static List<String> outcomes(JsonNode answer) {
        return StreamSupport.stream(answer.path("checks").spliterator(), false)
                .map(check -> check.path("outcome").asText())
                .toList();
    }

    @Test
    void anItemWithoutItsMassIsMissed() throws IOException {
        Spreadsheet opened = Spreadsheet.opened(folder, LiveService.url(), "Balance.A22=tool box", "Balance.D22=900");

        assertThat(opened.text("Balance.I7")).isEqualTo(REFUSED);
        assertThat(opened.text("Balance.H19"))
                .startsWith("#ERR 400 /items/" + EXAMPLE.path("items").size() + "/mass_g: ");
    }

    @Test
    void everyHeadwindOfTheTableIsAskedFor() throws IOException {
        ObjectNode asked = unchanged.question("Endurance.I2");
        for (int row = 20; row <= 25; row++) {
            asked.put("headwind_m_per_s", unchanged.number("Endurance.E" + row));
            ObjectNode answer = LiveService.answer("endurance", asked);
            Shown.assertShows(unchanged, "Endurance.F" + row, answer, "/radius_of_action_km");
            Shown.assertShows(unchanged, "Endurance.G" + row, answer, "/best_range/ground_range_km");
        }
    }

    @Test
    void anotherEntryIsAnotherQuestion() throws IOException {
        Spreadsheet opened = Spreadsheet.opened(
                folder,
                LiveService.url(),
                "Balance.A22=ballast",
                "Balance.B22=250",
                "Balance.D22=300",
                "Wires.D6=11,1",
                "Endurance.B17=lipo");

        // The row before it is empty; a number of pieces that is not given is 1.
        double massG = unchanged.number("Balance.I8") + 250;
        assertThat(opened.question("Balance.L3").path("items"))
                .hasSize(EXAMPLE.path("items").size() + 1);
        assertThat(opened.number("Balance.I8")).isCloseTo(massG, within(1e-6));
        Shown.assertShows(opened, BALANCE, opened.answerTo("Balance.L3"));
        // The mass of the other sheet follows.
        assertThat(opened.question("Endurance.I2").path("takeoff_mass_g").asDouble())
                .isCloseTo(massG, within(1e-6));
        Shown.assertShows(opened, ENDURANCE, opened.answerTo("Endurance.I2"));
        // A decimal comma is understood.
        assertThat(opened.question("Wires.S6").path("supply_voltage_v").asDouble())
                .isEqualTo(11.1);
        Shown.assertShows(opened, "Wires.K6", opened.answerTo("Wires.S6"), "/recommended/drop_v");
    }

    @Test
    void whatIsWrongIsSaidInWords() throws IOException {
        Spreadsheet opened =
                Spreadsheet.opened(folder, LiveService.url(), "Balance.B7=-3", "Wires.C8=0", "Wires.B9=300");

        assertThat(opened.isSound()).isTrue();
        assertThat(opened.text("Balance.I7")).isEqualTo(REFUSED);
        assertThat(opened.text("Balance.I8")).isEqualTo("–");
        assertThat(opened.text("Balance.H19")).startsWith("#ERR 400 /items/0/mass_g: ");
        assertThat(opened.text("Endurance.F5")).isEqualTo(REFUSED);
        assertThat(opened.text("Wires.P8")).isEqualTo(REFUSED);
        assertThat(opened.text("Wires.R8")).startsWith("#ERR 400 /length_mm: ");
        assertThat(opened.text("Wires.P9")).isEqualTo("stop");
        assertThat(opened.text("Wires.R9"))
                .isEqualTo(opened.answerTo("Wires.S9").at("/findings/0/message").asText());
        Shown.assertShows(opened, "Wires.I10", opened.answerTo("Wires.S10"), "/recommended/gauge");
        // A sum over what is not known is not shown.
        assertThat(opened.text("Wires.O15")).isEqualTo("–");
    }

    @Test
    void aServiceThatIsNotThereIsToldBesideItsAddress() throws IOException {
        Spreadsheet opened = Spreadsheet.opened(folder, LiveService.urlOfNobody());

        assertThat(opened.text("Balance.E3")).startsWith("does not answer");
        assertThat(opened.text("Balance.I8")).isEqualTo("#VALUE!");
    }

    /** The walk-through of the README, and each of its rows by itself. */
    @Test
    void rowsGoInAndRowsComeOut() throws IOException {
        Tool.need("bash", "curl", "paste");
        Readme readme = new Readme(Spreadsheet.HOME.resolve("README.md"));
        Files.copy(Spreadsheet.HOME.resolve("runs.csv"), folder.resolve("runs.csv"));

        Command.Outcome outcome = Command.of("bash", "-euo", "pipefail", "-c", readme.commandsBefore("text"))
                .in(folder)
                .run();

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out().replace("\r", "")).isEqualTo(readme.answer());
        List<String> rows = outcome.out().lines().skip(1).toList();
        assertThat(rows).hasSize(6);
        for (String row : rows.subList(0, 5)) {
            String[] cells = row.split(",");
            ObjectNode request = JsonNodeFactory.instance
                    .objectNode()
                    .put("current_a", Double.valueOf(cells[0]))
                    .put("length_mm", Double.valueOf(cells[1]))
                    .put("supply_voltage_v", Double.valueOf(cells[2]))
                    .put("max_drop_percent", Double.valueOf(cells[3]));
            if (!cells[4].isEmpty()) {
                request.put("insulation", cells[4]);
            }
            ObjectNode answer = LiveService.answer("wire-sizing", request);
            assertThat(cells[5]).isEqualTo(answer.at("/recommended/gauge").asText());
            assertThat(cells[6])
                    .isEqualTo(answer.at("/recommended/drop_percent").asText());
            assertThat(cells[7]).isEqualTo(answer.at("/recommended/mass_g").asText());
            assertThat(cells[8]).isEqualTo(answer.path("verdict").asText());
        }
        assertThat(rows.get(5)).contains("400 /current_a: ");
    }

    /** The questions stay short enough for programs that take 2,048 characters. */
    @Test
    void questionsFitWhereAddressesAreShort() throws IOException {
        int longestPick = "&pick=/mean_aerodynamic_chord_mm".length();
        for (String place : List.of("Balance.L3", "Endurance.I2", "Wires.S6")) {
            assertThat(unchanged.text(place).length() + longestPick).isLessThan(2048);
        }
        assertThat(unchanged.text("Balance.L4"))
                .isEqualTo(unchanged.text("Balance.L3").length() + " characters");
        assertThat(unchanged.text("Balance.L3")).doesNotContainPattern(Pattern.compile("\\s"));
    }
}
