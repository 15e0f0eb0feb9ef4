package trestle.endpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.api.model.ApiWorking;
import trestle.catalogue.Catalogue;
import trestle.finding.Arithmetic;

/** What a review works out of its parts together can be redone from its workings, for an aircraft with two motors. */
class MarginsWorkedTest {
    private static final Path ROWS = Path.of("src", "test", "resources", "findings", "build-review.jsonl");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Three digits, beside what printing six digits may cost where numbers cancel. */
    private static final double THREE_DIGITS = 5e-4;

    private static final double WORSE_THAN_DRAWN = 4;

    @ParameterizedTest
    @ValueSource(
            strings = {"motor-out-no-control", "motor-out-bank", "motor-out-no-climb", "motor-out-asymmetric-drag"})
    void everyExpressionComesToItsValue(String code) throws IOException {
        List<ApiWorking> lines = workings(Catalogue.named("build-review").orElseThrow(), request(code)).stream()
                .filter(line -> line.meaning().startsWith("one motor out:")
                        || line.meaning().startsWith("go-around:"))
                .filter(line -> !line.expression().startsWith(line.symbol() + ":"))
                .toList();
        assertThat(lines).extracting(ApiWorking::symbol).contains("N_R", "N_T", "T_m", "phi", "D_t", "c");
        for (ApiWorking line : lines) {
            String numbers = line.expression().substring(line.expression().lastIndexOf(" = ") + 3);
            double off = THREE_DIGITS * Math.max(Math.abs(line.value()), 1e-9)
                    + WORSE_THAN_DRAWN * Arithmetic.roundingOf(numbers);
            assertThat(Arithmetic.of(numbers)).as(line.expression()).isCloseTo(line.value(), Offset.offset(off));
        }
    }

    private static JsonNode request(String code) throws IOException {
        for (String line : Files.readAllLines(ROWS)) {
            JsonNode row = MAPPER.readTree(line);
            if (row.path("code").asText().equals(code)) {
                return row.get("request");
            }
        }
        throw new IllegalArgumentException(code);
    }

    private static <Q, R, W> List<ApiWorking> workings(Calculation<Q, R, W, ?> calculation, JsonNode request)
            throws IOException {
        return calculation.workings(calculation.done(MAPPER.treeToValue(request, calculation.requestType())));
    }
}
