package trestle;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;

/** The command line. */
class MainTest {
    private final StringWriter printed = new StringWriter();
    private final StringWriter complained = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new Main())
                .setOut(new PrintWriter(printed))
                .setErr(new PrintWriter(complained))
                .execute(arguments);
    }

    @Test
    void aTakenPortIsOneLineAndExitCodeTwo() throws IOException {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            assertThat(run("--port", String.valueOf(taken.getLocalPort()))).isEqualTo(2);
            assertThat(said.toString(StandardCharsets.UTF_8).lines())
                    .filteredOn(line -> line.startsWith("trestle:"))
                    .singleElement()
                    .asString()
                    .contains("127.0.0.1", String.valueOf(taken.getLocalPort()));
        } finally {
            System.setErr(before);
        }
    }

    @Test
    void helpListsEveryOptionWithItsVariable() {
        assertThat(run("--help")).isZero();
        assertThat(printed.toString())
                .contains("--host", "--port", "--max-body-bytes", "--max-batch-bytes")
                .contains("--max-batch-seconds", "--max-concurrent-requests")
                .contains("--allowed-origins", "--allowed-hosts", "--token-file", "--log", "--demo", "--check")
                .contains(
                        "TRESTLE_HOST",
                        "TRESTLE_PORT",
                        "TRESTLE_ALLOWED_ORIGINS",
                        "TRESTLE_TOKEN_FILE",
                        "TRESTLE_TOKEN.");
    }

    @Test
    void theVersionIsOneLine() {
        assertThat(run("--version")).isZero();
        assertThat(printed.toString().strip()).matches("trestle [0-9]+\\.[0-9]+\\.[0-9]+");
    }

    @Test
    void theCheckAsksEveryCalculationAndStops() {
        PrintStream before = System.out;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            assertThat(run("--check", "--port", "0")).isZero();
        } finally {
            System.setOut(before);
        }
        for (Calculation<?, ?, ?, ?> calculation : Catalogue.calculations()) {
            assertThat(said.toString(StandardCharsets.UTF_8))
                    .containsPattern(calculation.name() + " +answered: (fit|attention|stop)");
        }
    }

    @Test
    void theLogIsOneObjectALineWhenAMachineReadsIt() throws IOException {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            assertThat(run("--check", "--port", "0", "--log", "json")).isZero();
        } finally {
            System.setErr(before);
            LogToStandardError.writeAs(LogForm.TEXT);
        }
        List<String> lines = said.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines).hasSizeGreaterThan(Catalogue.calculations().size());
        for (String line : lines) {
            JsonNode read = new ObjectMapper().readTree(line);
            assertThat(read.path("logger").asText()).as(line).isEqualTo("trestle.request");
            assertThat(read.path("status").isInt()).as(line).isTrue();
            assertThat(read.path("duration_ms").isNumber()).as(line).isTrue();
            assertThat(read.path("request_id").asText()).as(line).matches("[0-9a-f]{16}");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "--port, 99999",
        "--port, -5",
        "--max-concurrent-requests, 0",
        "--max-concurrent-requests, -3",
        "--max-batch-seconds, -1",
        "--max-batch-bytes, 0",
        "--max-body-bytes, 0",
        "--max-body-bytes, 99999999999"
    })
    void anOptionOutOfItsRangeIsNamedWithTheRange(String option, String value) {
        assertThat(run(option + "=" + value)).isEqualTo(2);
        assertThat(complained.toString())
                .startsWith(option + " is " + value + ": it may be ")
                .doesNotContain("Exception");
    }

    @Test
    void aTokenThatCannotBeHadStopsTheStart() {
        assertThat(run("--token-file", "/no/such/file", "--port", "0")).isEqualTo(2);
        assertThat(complained.toString()).startsWith("the file /no/such/file cannot be read as a token");
    }

    @Test
    void aFormOfTheLogThatIsNoneIsNamed() {
        assertThat(run("--log", "xml")).isEqualTo(2);
        assertThat(complained.toString()).contains("--log", "text or json");
    }

    @Test
    void aServiceThatDoesNotAnswerFailsTheCheck() {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        assertThat(SelfCheck.run(new Caller("http://127.0.0.1:9", Optional.empty()), out))
                .isFalse();
        assertThat(said.toString(StandardCharsets.UTF_8)).startsWith("the index: ");
    }

    @Test
    void aMistypedOptionIsNamed() {
        assertThat(run("--prot", "8080")).isEqualTo(2);
        assertThat(complained.toString()).contains("--prot");
    }
}
