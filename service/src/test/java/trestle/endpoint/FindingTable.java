package trestle.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;

/** Each finding that can be found, how much it weighs, and a request that shows it: a file a calculation. */
public final class FindingTable {
    private static final Path TABLES = Path.of("src", "test", "resources", "findings");

    private FindingTable() {}

    /**
     * A finding and what shows it.
     *
     * @param calculation its name
     * @param code of the finding
     * @param severity as the answer has it
     * @param request which keeps the contract
     */
    record Row(String calculation, String code, String severity, JsonNode request) {
        /** What its request finds instead; empty where it finds this. */
        Optional<List<String>> instead() {
            List<String> found = new ArrayList<>();
            answer(Catalogue.named(calculation).orElseThrow(), request)
                    .path("findings")
                    .forEach(f -> found.add(
                            f.path("severity").asText() + " " + f.path("code").asText()));
            return found.contains(severity + " " + code) ? Optional.empty() : Optional.of(found);
        }

        /** What its answer says, in sentences. */
        List<String> said() {
            List<String> messages = new ArrayList<>();
            answer(Catalogue.named(calculation).orElseThrow(), request)
                    .path("findings")
                    .forEach(f -> messages.add(f.path("message").asText()));
            return messages;
        }

        @Override
        public String toString() {
            return calculation + ": " + severity + " " + code;
        }
    }

    /** All rows. */
    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(TABLES)) {
            for (Path file : files.sorted().toList()) {
                String calculation = file.getFileName().toString().replace(".jsonl", "");
                for (String line : Files.readAllLines(file)) {
                    JsonNode row = Json.MAPPER.readTree(line);
                    rows.add(new Row(
                            calculation,
                            row.path("code").asText(),
                            row.path("severity").asText(),
                            row.path("request")));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return rows;
    }

    /**
     * A row that its request does not show.
     *
     * @param codes whose rows are tried first
     * @return the first such row; empty where the table holds
     */
    public static Optional<String> broken(Collection<String> codes) {
        List<Row> rows = rows();
        return Stream.concat(
                        rows.stream().filter(row -> codes.contains(row.code())),
                        rows.stream().filter(row -> !codes.contains(row.code())))
                .filter(row -> row.instead().isPresent())
                .map(Row::toString)
                .findFirst();
    }

    private static <Q, R, W, A> JsonNode answer(Calculation<Q, R, W, A> calculation, JsonNode request) {
        Q bound = Binder.bind(request.deepCopy(), calculation.requestType());
        return Json.MAPPER.valueToTree(calculation.answer(calculation.done(bound)));
    }
}
