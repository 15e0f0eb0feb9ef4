package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples {@code compare_builds.py} and {@code what_to_measure.py} against the live service. */
class StudiesHttpTest {
    @TempDir
    Path folder;

    @Test
    void buildsAreComparedRowForRow() {
        Command.Outcome outcome = Python.run(LiveService.url(), "compare_builds.py");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).contains("12 of 12");
        List<String> lines = outcome.out().lines().toList();
        assertThat(lines).hasSize(13);
        assertThat(lines.get(0).split("\t")).startsWith("parallel", "zero_lift_coefficient", "verdict", "total_mass_g");
        assertThat(lines.get(1).split("\t")).hasSizeGreaterThanOrEqualTo(6);
    }

    @Test
    void aStudyThatPointsNowhereIsSaid() throws IOException {
        Path study = folder.resolve("study.json");
        Files.writeString(
                study,
                "{\"calculation\": \"wire-sizing\", \"base\": {\"current_a\": 14, \"length_mm\": 620, \"supply_voltage_v\": 25.2},"
                        + " \"factors\": [{\"at\": \"/lenght_mm\", \"values\": [1]}], \"pick\": [\"/recommended/gauge\"]}");
        Command.Outcome outcome = Python.run(LiveService.url(), "compare_builds.py", study.toString());

        assertThat(outcome.exitCode()).isNotZero();
        assertThat(outcome.err()).contains("/factors/0/at: lenght_mm is not a field here; did you mean length_mm?");
    }

    @Test
    void tenFactsSayWhatToMeasureFirst() {
        Command.Outcome outcome = Python.run(LiveService.url(), "what_to_measure.py");

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out()).startsWith("attention\n").contains("endurance_h", "measure first\n");
        String first = outcome.out()
                .lines()
                .dropWhile(line -> !line.equals("measure first"))
                .skip(1)
                .findFirst()
                .orElseThrow();
        assertThat(first).contains("/airframe/drag/zero_lift_coefficient");
    }
}
