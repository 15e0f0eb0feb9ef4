package trestle.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;

/**
 * Both ends of the range of every field of every request, each word, the shortest and the longest of
 * each list: answered within the contract, or refused for what they are beside the rest.
 */
class RangeSweepTest {
    /** What takes this long has no end: the dearest request takes a second of a whole core. */
    private static final long LONGEST_S = 20;

    /** Of all ends, those that some request has answered; the rest contradict what stands beside them. */
    private static final double LEAST_SHARE_ANSWERED = 0.85;

    static List<String> calculations() {
        return Catalogue.calculations().stream().map(Calculation::name).toList();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void whatTheContractLetsInIsAnsweredWithinIt(String calculation) throws Exception {
        Sweep sweep = Sweep.of(calculation);
        Map<String, String> faults = new TreeMap<>();
        Map<String, Boolean> ends = new LinkedHashMap<>();
        for (JsonNode base : bases(sweep)) {
            Set<String> here = new HashSet<>();
            for (End end : End.of(base, sweep.schema())) {
                boolean given = !base.at(end.at()).isMissingNode() && here.add(end.key());
                if (given || !ends.getOrDefault(end.key(), false)) {
                    ends.merge(end.key(), tried(sweep, base, end, faults), Boolean::logicalOr);
                }
            }
        }
        for (JsonNode base : Contract.table(calculation)) {
            for (End end : End.of(base, sweep.schema())) {
                if (!ends.getOrDefault(end.key(), false)) {
                    ends.merge(end.key(), tried(sweep, base, end, faults), Boolean::logicalOr);
                }
            }
        }
        assertThat(faults.keySet()).as(calculation).isEmpty();
        long answered = ends.values().stream().filter(a -> a).count();
        // What a study varies and picks belongs to one calculation: most ends contradict the rest of their request.
        boolean study = Catalogue.isStudy(Catalogue.named(calculation).orElseThrow());
        assertThat(answered).as("of the ends %s these were answered", ends).isGreaterThan((long)
                ((study ? 0.1 : LEAST_SHARE_ANSWERED) * ends.size()));
    }

    /** The least request shows each field beside as little as can be, the example beside its usual company. */
    private static List<JsonNode> bases(Sweep sweep) {
        return List.of(Trees.least(sweep.schema()), Contract.example(sweep.calculation()));
    }

    /** A number just above nothing is let in by an open range, and no calculation is meant for it. */
    @ParameterizedTest
    @MethodSource("calculations")
    void everyNumberOfARequestHasTwoRealEnds(String calculation) {
        List<String> open = new ArrayList<>();
        endless(Contract.request(calculation), calculation, open);
        assertThat(open).isEmpty();
    }

    /** Whether it was answered; what is wrong with it goes to the faults. */
    private static boolean tried(Sweep sweep, JsonNode base, End end, Map<String, String> faults)
            throws InterruptedException, ExecutionException {
        FutureTask<Sweep.Outcome> trial = new FutureTask<>(() -> sweep.tried(base, end));
        Thread thread = new Thread(trial, "sweep");
        thread.setDaemon(true);
        thread.start();
        try {
            Sweep.Outcome outcome = trial.get(LONGEST_S, TimeUnit.SECONDS);
            outcome.faults().forEach(fault -> faults.putIfAbsent(end.key() + " " + fault, base.toString()));
            return outcome.answered();
        } catch (TimeoutException endless) {
            throw new AssertionError(
                    sweep.calculation() + " " + end.key() + " does not end: " + base + " "
                            + Arrays.toString(thread.getStackTrace()),
                    endless);
        }
    }

    private static void endless(JsonNode schema, String at, List<String> open) {
        JsonNode known = Contract.resolved(schema);
        String type = known.path("type").asText();
        if (type.equals("number") || type.equals("integer")) {
            if (!known.has("minimum")
                    || !known.has("maximum")
                    || known.path("exclusiveMinimum").asBoolean()) {
                open.add(at);
            }
        }
        if (known.has("items")) {
            endless(known.path("items"), at + "/{}", open);
        }
        Contract.properties(known).forEach((name, field) -> endless(field, at + "/" + name, open));
    }
}
