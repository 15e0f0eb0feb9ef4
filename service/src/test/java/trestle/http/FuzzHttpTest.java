package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.contract.Contract;
import trestle.contract.Misfits;
import trestle.endpoint.Calculation;

/**
 * Requests drawn from the contract, and spoilt ones, sent to the running service for a time: a few seconds in every
 * build, {@code -Dfuzz.seconds} in the profile {@code fuzz}. What fails is kept in {@code target/fuzz} with its seed, by
 * which {@code -Dfuzz.seed} sends it again first.
 */
class FuzzHttpTest {
    private static final double SECONDS = Double.parseDouble(System.getProperty("fuzz.seconds", "5"));
    private static final long FIRST_SEED = Long.getLong("fuzz.seed", 20_261_127);
    private static final long SLOWEST_MS = Long.getLong("fuzz.slowest.ms", 5_000);
    private static final Path KEPT = Path.of("target", "fuzz");

    /** More kinds of failure than this need no further search. */
    private static final int MOST_KEPT = 20;

    private static final Pattern NO_NUMBER = Pattern.compile("[:\\[, ]-?(NaN|Infinity)[,}\\] \\n]");
    private static final List<String> OPTIONS = List.of(
            "bands=false",
            "bands=false",
            "bands=false",
            "bands=quick",
            "estimates=false&bands=false",
            "bands=false&workings=true",
            "bands=false&pick=/verdict",
            "bands=false&as=csv",
            "bands=false&as=svg",
            "bands=false&errors=inline&pick=/verdict",
            "part=endurance&bands=false",
            "as=nothing");

    private static JsonNode contract;
    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<String, String> failures = new TreeMap<>();

    /** What is sent. */
    private record Sent(String calculation, String options, String mediaType, byte[] body, boolean whole) {}

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = FuzzHttpTest.class.getResourceAsStream("/trestle/api/openapi.json")) {
            contract = Json.MAPPER.readTree(in);
        }
    }

    @Test
    void noRequestMakesTheServiceFailHangOrAnswerWhatIsNoNumber() throws Exception {
        Map<String, ObjectNode> examples = new TreeMap<>();
        for (Calculation<?, ?, ?, ?> calculation : Catalogue.calculations()) {
            examples.put(calculation.name(), (ObjectNode) LiveService.example(calculation.name()));
        }
        List<String> names = new ArrayList<>(examples.keySet());
        long until = System.nanoTime() + (long) (SECONDS * 1e9);
        Map<Integer, Integer> statuses = new TreeMap<>();
        for (long seed = FIRST_SEED; System.nanoTime() < until && failures.size() < MOST_KEPT; seed++) {
            Random random = new Random(seed);
            String name = names.get(random.nextInt(names.size()));
            statuses.merge(send(seed, drawn(random, seed, name, examples.get(name))), 1, Integer::sum);
        }
        System.out.println("fuzzed from seed " + FIRST_SEED + ": requests by status " + statuses);
        assertThat(failures).isEmpty();
        assertThat(statuses.keySet()).as("what was tried").contains(200, 400);
    }

    private static Sent drawn(Random random, long seed, String name, ObjectNode example) {
        RandomRequest draw = new RandomRequest(contract, seed);
        ObjectNode request = random.nextInt(4) == 0 ? draw.of(name) : draw.near(name, example);
        String options = OPTIONS.get(random.nextInt(OPTIONS.size()));
        Mutation mutation = new Mutation(random);
        byte[] whole = Json.exactBytes(request);
        return switch (random.nextInt(10)) {
            case 0, 1, 2, 3 -> new Sent(name, options, MediaTypes.JSON, whole, true);
            case 4, 5, 6 -> new Sent(name, options, MediaTypes.JSON, mutation.ofTree(request), false);
            case 7, 8 -> new Sent(name, options, MediaTypes.JSON, mutation.ofBytes(whole), false);
            default ->
                new Sent(
                        name,
                        options,
                        MediaTypes.NDJSON,
                        (text(mutation.ofTree(request)) + "\n" + text(whole) + "\n").getBytes(StandardCharsets.UTF_8),
                        false);
        };
    }

    private static String text(byte[] json) {
        return new String(json, StandardCharsets.UTF_8);
    }

    private int send(long seed, Sent sent) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create(LiveService.address() + "/v1/" + sent.calculation() + "?" + sent.options()))
                .header("Content-Type", sent.mediaType())
                .timeout(Duration.ofMillis(SLOWEST_MS * 4))
                .POST(HttpRequest.BodyPublishers.ofByteArray(sent.body()))
                .build();
        long start = System.nanoTime();
        HttpResponse<String> answer;
        try {
            answer = answered(request);
        } catch (IOException none) {
            keep(seed, sent, "no answer: " + none.getClass().getSimpleName(), String.valueOf(none.getMessage()));
            return 0;
        }
        long tookMs = (System.nanoTime() - start) / 1_000_000;
        if (tookMs > SLOWEST_MS) {
            keep(seed, sent, "slow", tookMs + " ms");
        }
        judge(seed, sent, answer);
        return answer.statusCode();
    }

    /**
     * A refusal that leaves a body unread ends its connection, and this client may take that connection for its next
     * request before it hears of that: RFC 9112, section 9.3.1, has it sent again. What gets no answer twice has failed.
     */
    private HttpResponse<String> answered(HttpRequest request) throws IOException, InterruptedException {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (HttpTimeoutException hung) {
            throw hung;
        } catch (IOException closed) {
            return client.send(request, HttpResponse.BodyHandlers.ofString());
        }
    }

    private void judge(long seed, Sent sent, HttpResponse<String> answer) throws IOException {
        int status = answer.statusCode();
        String type = answer.headers().firstValue("Content-Type").orElse("");
        String body = answer.body();
        if (status >= 500) {
            keep(seed, sent, "status " + status, body);
        } else if (status >= 400 && !type.startsWith("application/problem+json")) {
            keep(seed, sent, "a refusal that is no problem", type);
        } else if (body.contains("\"/problems/internal\"")) {
            keep(seed, sent, "a row that failed", body);
        } else if (!type.startsWith("image/") && NO_NUMBER.matcher(body).find()) {
            keep(seed, sent, "no number", body);
        } else if (type.startsWith(MediaTypes.JSON)) {
            JsonNode tree = Json.MAPPER.readTree(body);
            if (sent.whole() && !sent.options().contains("part=")) {
                List<String> misfits = Misfits.of(tree, Contract.answer(sent.calculation()));
                if (!misfits.isEmpty()) {
                    keep(seed, sent, "outside the contract", misfits.toString());
                }
            }
        }
    }

    /** Keeps the request with its seed; one of each kind and calculation. */
    private void keep(long seed, Sent sent, String kind, String said) throws IOException {
        String place = sent.calculation() + ", " + kind;
        if (failures.putIfAbsent(
                        place,
                        "seed " + seed + " ?" + sent.options() + ": " + said.substring(0, Math.min(500, said.length())))
                == null) {
            Files.createDirectories(KEPT);
            Files.write(KEPT.resolve(seed + "-" + sent.calculation() + ".request"), sent.body());
        }
    }
}
