package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.api.model.ApiWorking;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.binding.Refusal;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MissingFields;
import trestle.finding.Arithmetic;
import trestle.page.Documents;

/** Whatever is answered has workings, and each of their expressions comes to its value. */
class AnyWorkingsTest {
    private static final int REQUESTS = 250;
    private static final long FIRST_SEED = 20_261_125;

    /** Three digits, beside what printing six digits may cost where numbers cancel. */
    private static final double THREE_DIGITS = 5e-4;

    /** Roundings drawn at random do not always meet the worst one. */
    private static final double WORSE_THAN_DRAWN = 4;

    /** Differences this small against the numbers of an aircraft are rounding of doubles. */
    private static final double NOTHING = 1e-6;

    private static JsonNode contract;

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = AnyWorkingsTest.class.getResourceAsStream("/trestle/api/openapi.json")) {
            contract = Json.MAPPER.readTree(in);
        }
    }

    static List<Calculation<?, ?, ?, ?>> calculations() {
        return Catalogue.calculations();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    <Q, R, W, A> void whatIsAnsweredHasSoundWorkings(Calculation<Q, R, W, A> calculation) throws IOException {
        JsonNode example = Json.MAPPER.readTree(
                Documents.onBoard().example(calculation.name()).orElseThrow());
        Map<String, String> wrong = new TreeMap<>();
        int worked = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + REQUESTS; seed++) {
            JsonNode request = new RandomRequest(contract, seed).near(calculation.name(), example);
            try {
                List<ApiWorking> lines = workings(calculation, request);
                lines.forEach(line -> unsound(line).ifPresent(w -> wrong.put(kind(line), w)));
                worked += lines.isEmpty() ? 0 : 1;
            } catch (Refusal | ImpossibleRequest | MissingFields refused) {
                // Nothing was answered.
            }
        }
        assertThat(wrong).as(calculation.name()).isEmpty();
        assertThat(worked).as("requests with workings").isGreaterThan(REQUESTS / 25);
    }

    private static <Q, R, W> List<ApiWorking> workings(Calculation<Q, R, W, ?> calculation, JsonNode request) {
        return calculation.workings(
                calculation.done(Binder.bind(request, calculation.requestType()), Certainty.ESTIMATED));
    }

    private static String kind(ApiWorking line) {
        return line.expression().replaceAll("[0-9].*", "");
    }

    private static Optional<String> unsound(ApiWorking line) {
        if (line.expression().startsWith(line.symbol() + ":")) {
            return Optional.empty();
        }
        String numbers = line.expression().substring(line.expression().lastIndexOf(" = ") + 3);
        double redone = Arithmetic.of(numbers);
        double allowed =
                NOTHING + THREE_DIGITS * Math.abs(line.value()) + WORSE_THAN_DRAWN * Arithmetic.roundingOf(numbers);
        return Math.abs(redone - line.value()) <= allowed
                ? Optional.empty()
                : Optional.of(line.meaning() + " " + line.value() + " but " + line.expression());
    }
}
