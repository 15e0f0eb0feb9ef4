package trestle.endpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.binding.Binder;
import trestle.catalogue.Catalogue;

/**
 * One table, a file a calculation: each finding that can be found, how much it weighs, and a request
 * that shows it.
 */
class FindingTableTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path TABLES = Path.of("src", "test", "resources", "findings");

    /** The places where a code is given: a grade of a check, or a note. */
    private static final Pattern CODE =
            Pattern.compile("\\.(?:stop|attention|note)(?:If)?\\(\\s*(?:[^\";]*?,\\s*)?\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

    private record Row(String calculation, String code, String severity, JsonNode request) {
        @Override
        public String toString() {
            return calculation + ": " + severity + " " + code;
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theRequestOfEachRowShowsItsFinding(Row row) throws IOException {
        JsonNode answer = answer(Catalogue.named(row.calculation()).orElseThrow(), row.request());
        List<String> found = new ArrayList<>();
        answer.path("findings")
                .forEach(f -> found.add(
                        f.path("severity").asText() + " " + f.path("code").asText()));
        assertThat(found).contains(row.severity() + " " + row.code());
    }

    @Test
    void everyCodeOfTheSourceHasARow() throws IOException {
        Set<String> rows = new TreeSet<>();
        rows().forEach(row -> rows.add(row.code()));
        assertThat(codes()).isSubsetOf(rows);
    }

    static Stream<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(TABLES)) {
            for (Path file : files.sorted(Comparator.naturalOrder()).toList()) {
                String calculation = file.getFileName().toString().replace(".jsonl", "");
                for (String line : Files.readAllLines(file)) {
                    JsonNode row = MAPPER.readTree(line);
                    rows.add(new Row(
                            calculation,
                            row.path("code").asText(),
                            row.path("severity").asText(),
                            row.path("request")));
                }
            }
        }
        return rows.stream();
    }

    private static Set<String> codes() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
            for (Path source :
                    sources.filter(p -> p.toString().endsWith(".java")).toList()) {
                Matcher code = CODE.matcher(Files.readString(source));
                while (code.find()) {
                    codes.add(code.group(1));
                }
            }
        }
        return codes;
    }

    private static <Q, R, W, A> JsonNode answer(Calculation<Q, R, W, A> calculation, JsonNode request)
            throws IOException {
        Q bound = Binder.bind(request, calculation.requestType());
        return MAPPER.valueToTree(calculation.answer(calculation.done(bound)));
    }
}
