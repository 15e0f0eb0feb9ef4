package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/** That cells of the spreadsheet show what the service answers. */
final class Shown {
    private Shown() {}

    static void assertShows(Spreadsheet opened, Map<String, String> pointers, JsonNode answer) {
        for (Map.Entry<String, String> cell : pointers.entrySet()) {
            assertShows(opened, cell.getKey(), answer, cell.getValue());
        }
    }

    static void assertShows(Spreadsheet opened, String place, JsonNode answer, String pointer) {
        JsonNode expected = answer.at(pointer);
        if (expected.isTextual()) {
            assertThat(opened.text(place)).as(place).isEqualTo(expected.asText());
        } else {
            assertThat(expected.isNumber()).as(pointer).isTrue();
            assertThat(opened.number(place)).as(place).isEqualTo(expected.asDouble());
        }
    }

    /** Every check of an answer, from row 6 on, and no more than those. */
    static void assertLists(
            Spreadsheet opened, String sheet, String about, String outcome, String give, JsonNode answer) {
        JsonNode checks = answer.path("checks");
        assertThat(checks).isNotEmpty();
        for (int i = 0; i < checks.size(); i++) {
            JsonNode check = checks.get(i);
            int row = 6 + i;
            assertThat(opened.text(sheet + "." + about + row))
                    .isEqualTo(check.path("about").asText());
            assertThat(opened.text(sheet + "." + outcome + row))
                    .isEqualTo(check.path("outcome").asText().replace('_', ' '));
            assertThat(opened.text(sheet + "." + give + row))
                    .isEqualTo(check.at("/give/0").asText());
        }
        assertThat(opened.text(sheet + "." + about + (6 + checks.size()))).isEmpty();
    }
}
