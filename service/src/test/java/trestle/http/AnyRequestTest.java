package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.api.model.ApiFault;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.binding.Refusal;
import trestle.catalogue.Catalogue;
import trestle.contract.Contract;
import trestle.contract.Misfits;
import trestle.contract.Places;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MissingFields;
import trestle.page.Documents;

/**
 * Whatever the contract lets through is answered with finite numbers or refused with pointers:
 * never an exception, a NaN or a hang.
 */
class AnyRequestTest {
    private static final int REQUESTS = 1500;
    private static final long FIRST_SEED = 20_261_124;

    /** Far above any answer on a busy machine; a hang is what this is for. */
    private static final long LONGEST_MS = 5000;

    private static final Documents DOCUMENTS = Documents.onBoard();
    private static JsonNode contract;

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = AnyRequestTest.class.getResourceAsStream("/trestle/api/openapi.json")) {
            contract = Json.MAPPER.readTree(in);
        }
    }

    static List<Calculation<?, ?, ?, ?>> calculations() {
        return Catalogue.calculations();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    <Q, R, W, A> void anyRequestIsAnsweredOrRefused(Calculation<Q, R, W, A> calculation) throws IOException {
        JsonNode example =
                Json.MAPPER.readTree(DOCUMENTS.example(calculation.name()).orElseThrow());
        int answered = 0;
        Map<String, String> failures = new TreeMap<>();
        for (long seed = FIRST_SEED; seed < FIRST_SEED + REQUESTS; seed++) {
            RandomRequest draw = new RandomRequest(contract, seed);
            JsonNode request = seed % 4 == 0 ? draw.of(calculation.name()) : draw.near(calculation.name(), example);
            long start = System.nanoTime();
            try {
                answered += answered(calculation, request) ? 1 : 0;
            } catch (RuntimeException thrown) {
                failures.putIfAbsent(kind(thrown), "seed " + seed + ": " + request);
            }
            long tookMs = (System.nanoTime() - start) / 1_000_000;
            assertThat(tookMs).as("%s, seed %d", calculation.name(), seed).isLessThan(LONGEST_MS);
        }
        assertThat(failures).as(calculation.name()).isEmpty();
        assertThat(answered).as("requests that were answered").isGreaterThan(REQUESTS / 25);
    }

    /** What was thrown and where, so that each way of failing is told once. */
    private static String kind(RuntimeException thrown) {
        String text = String.valueOf(thrown.getMessage()).replaceAll("-?[0-9][0-9.E-]*", "#");
        return thrown.getClass().getSimpleName() + " " + text + " at " + thrown.getStackTrace()[0];
    }

    private static <Q, R, W, A> boolean answered(Calculation<Q, R, W, A> calculation, JsonNode request) {
        String text = request.toString();
        try {
            Q bound = Binder.bind(request, calculation.requestType());
            byte[] answer = Json.bytes(calculation.answer(calculation.done(bound, Certainty.ESTIMATED)));
            JsonNode tree = Json.MAPPER.readTree(answer);
            spoken(tree.path("findings"));
            kept(tree, calculation.name(), text);
            return true;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (Refusal refusal) {
            pointed(refusal.faults(), calculation.name(), text);
        } catch (ImpossibleRequest impossible) {
            pointed(impossible.faults(), calculation.name(), text);
        } catch (MissingFields missing) {
            pointed(missing.faults(), calculation.name(), text);
        }
        return false;
    }

    /** A finding is what a person reads: a sentence, or a question for the likely slip. */
    private static void spoken(JsonNode findings) {
        for (JsonNode finding : findings) {
            assertThat(finding.path("message").asText()).matches("[\\p{Lu}0-9−-].*\\.");
        }
    }

    /** An answer keeps the contract: its own ranges, and the places of its request. */
    private static void kept(JsonNode answer, String calculation, String request) {
        assertThat(Misfits.of(answer, Contract.answer(calculation))).as(request).isEmpty();
        assertThat(Places.unknown(answer, Contract.request(calculation)))
                .as(request)
                .isEmpty();
    }

    private static void pointed(List<ApiFault> faults, String calculation, String request) {
        JsonNode schema = Contract.request(calculation);
        assertThat(faults).as(request).isNotEmpty();
        assertThat(faults)
                .as(request)
                .allMatch(f -> f.at() != null && f.message() != null && Contract.hasPlace(schema, f.at()));
    }
}
