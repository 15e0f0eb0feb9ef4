package trestle.endpoint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.endpoint.FindingTable.Row;

/** One table, a file a calculation: each finding that can be found, how much it weighs, and a request that shows it. */
class FindingTableTest {
    static List<Row> rows() {
        return FindingTable.rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theRequestOfEachRowShowsItsFinding(Row row) {
        assertThat(row.instead()).isEmpty();
    }

    /** The digits of a double are no number that a builder can use. */
    @ParameterizedTest
    @MethodSource("rows")
    void noSentencePrintsANumberUnrounded(Row row) {
        assertThat(row.said()).noneMatch(message -> message.matches("(?s).*\\d\\.\\d{6}.*"));
    }

    /** A code that is a stop here and asks for attention there has a row for each. */
    @Test
    void everyFindingOfTheSourcesHasARowWithEachOfItsSeverities() {
        Set<String> shown = new TreeSet<>();
        rows().forEach(row -> shown.add(row.code() + " " + row.severity()));
        Set<String> missing = new TreeSet<>();
        for (GradeSite site : GradeSite.all()) {
            for (String code : site.codes()) {
                String given = code + " " + site.severity();
                if (shown.stream().noneMatch(row -> code.startsWith("-") ? row.endsWith(given) : row.equals(given))) {
                    missing.add(given);
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void everyGradeOfACheckIsSeen() {
        List<GradeSite> checks = GradeSite.all().stream()
                .filter(site -> site.file().toString().endsWith("Checks.java"))
                .toList();
        assertThat(checks)
                .hasSizeGreaterThan(150)
                .noneMatch(site -> site.codes().isEmpty());
    }
}
