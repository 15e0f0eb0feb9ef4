package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The generated clients, compiled and run against the live service with the programs of their
 * README.
 */
class GeneratedClientsHttpTest {
    /** For compilers, on a machine that is busy with other things. */
    private static final int LONGEST_BUILD_S = 300;

    private static Path clients;

    @TempDir
    Path folder;

    @BeforeAll
    static void generate() {
        clients = GeneratedClients.generate();
    }

    @Test
    void pythonReviewsTheAircraft() throws IOException {
        Tool.need("python3");
        Tool.need(
                run("python3", "-c", "import pydantic, urllib3, dateutil; pydantic.TypeAdapter")
                                .exitCode()
                        == 0,
                "python3 has no pydantic 2, urllib3 or dateutil");
        take("python");
        assertDone(run("python3", "-m", "compileall", "-q", "clients/python/trestle_client"));
        write("review.py", GeneratedClients.README.shown("python"));

        assertReviews(command("python3", "review.py")
                .where("PYTHONPATH", folder.resolve("clients/python").toString()));
    }

    @Test
    void typeScriptReviewsTheAircraft() throws IOException {
        Path fetched = TypeScript.modules();
        take("typescript");
        Path modules = folder.resolve("node_modules");
        copy(fetched.resolve("@types"), modules.resolve("@types"));
        copy(fetched.resolve("undici-types"), modules.resolve("undici-types"));
        Files.createSymbolicLink(modules.resolve("trestle-client"), folder.resolve("clients/typescript"));
        write("review.mts", GeneratedClients.README.shown("ts"));
        String tsc = fetched.resolve(".bin/tsc").toString();
        assertDone(run(tsc, "--strict", "--project", "clients/typescript"));
        assertDone(run(tsc, "--strict", "--target", "es2022", "--module", "nodenext", "review.mts"));

        assertReviews(command("node", "review.mjs"));
    }

    @Test
    void cSharpReviewsTheAircraft() throws IOException {
        CSharp.need();
        write("Program.cs", GeneratedClients.README.shown("csharp"));
        assertDone(CSharp.library(clients.resolve("csharp/src/Trestle.Client"), folder)
                .run());
        assertDone(CSharp.program(folder).run());

        assertReviews(command("mono", "Program.exe"));
    }

    /** 0 °C was dropped once, and a truth value that was left out was sent as false. */
    @Test
    void cSharpSendsWhatItWasGivenAndNothingElse() throws IOException {
        CSharp.need();
        write("Program.cs", """
                static class Program {
                    static void Main() {
                        var given = System.IO.File.ReadAllText("aircraft.json");
                        var aircraft = Newtonsoft.Json.JsonConvert
                            .DeserializeObject<Trestle.Client.Model.BuildReviewRequest>(given);
                        System.Console.WriteLine(aircraft.ToJson());
                    }
                }
                """);
        ObjectNode aircraft = LiveService.example("build-review");
        ((ObjectNode) aircraft.at("/flight/conditions")).put("temperature_c", 0);
        ((ObjectNode) aircraft.path("charging")).put("ambient_c", 0).put("imbalance_percent", 0);
        write("aircraft.json", aircraft.toString());
        assertDone(CSharp.library(clients.resolve("csharp/src/Trestle.Client"), folder)
                .run());
        assertDone(CSharp.program(folder).run());

        Command.Outcome sent = command("mono", "Program.exe").run();

        assertDone(sent);
        assertThat(new ObjectMapper().readTree(sent.out()).equals(GeneratedClientsHttpTest::byValue, aircraft))
                .as(sent.out())
                .isTrue();
    }

    @Test
    void goReviewsTheAircraft() throws IOException {
        Tool.need("go");
        take("go");
        write("review.go", GeneratedClients.README.shown("go"));
        assertDone(go("bash", "-euc", "cd clients/go && go vet ./..."));
        String[] lines = GeneratedClients.README.commandsBefore("go").strip().split("\n");
        assertThat(lines[lines.length - 1]).isEqualTo("go run review.go");
        for (String line : lines) {
            if (!line.startsWith("go run ")) {
                assertDone(go(line.split(" ")));
            }
        }
        assertDone(go("go", "build", "-o", "review", "review.go"));

        assertReviews(command("./review"));
    }

    /** Asked by a query, generated clients would send all fields as one parameter. */
    @Test
    void everyCalculationIsPosted() throws IOException {
        String python = Files.readString(clients.resolve("python/trestle_client/api/calculations_api.py"));
        assertThat(python).contains("def build_review(", "def wire_sizing(").doesNotContain("_by_query");
        assertThat(clients.resolve("typescript/src/apis")).isDirectoryNotContaining("glob:**Queries*");
    }

    @Test
    void aDirectoryOfSomebodysIsLeftAlone() throws IOException {
        Path own = Files.createDirectories(folder.resolve("own/go"));
        write("own/go/mine.go", "package mine\n");

        Command.Outcome outcome =
                GeneratedClients.generate(folder.resolve("own").toString());

        assertThat(outcome.exitCode()).isEqualTo(73);
        assertThat(outcome.err()).contains(own.toString());
        assertThat(own.resolve("mine.go")).exists();
    }

    @Test
    void aWrongOptionIsToldHowItIsUsed() {
        Command.Outcome outcome = GeneratedClients.generate("--help");

        assertThat(outcome.exitCode()).isEqualTo(64);
        assertThat(outcome.err()).isEqualTo("usage: generate.sh [DIRECTORY]\n");
    }

    /** The program prints what the service says of a good aircraft, and of one that is refused. */
    private void assertReviews(Command program) throws IOException {
        ObjectNode good = LiveService.example("build-review");
        ObjectNode answer = LiveService.answer("build-review", good);
        write("aircraft.json", good.toString());
        Command.Outcome reviewed = program.run();
        assertDone(reviewed);
        List<String> lines = reviewed.out().lines().toList();
        String[] first = lines.get(0).split(" ");
        assertThat(first[0]).isEqualToIgnoringCase(answer.path("verdict").asText());
        assertThat(Double.valueOf(first[1]))
                .isEqualTo(answer.at("/key_figures/total_mass_g").asDouble());
        assertThat(lines.stream().skip(1).map(GeneratedClientsHttpTest::lowerFirstWord))
                .containsExactlyElementsOf(texts(answer.path("findings"), "severity", "at"));

        ObjectNode contradictory = good.deepCopy();
        ((ObjectNode) contradictory.path("airframe")).put("target_percent_mac", 30);
        ObjectNode problem = LiveService.answer("build-review", contradictory);
        assertThat(problem.path("status").asInt()).isEqualTo(422);
        write("aircraft.json", contradictory.toString());
        Command.Outcome refused = program.run();
        assertDone(refused);
        assertThat(refused.out().lines().map(line -> line.replaceFirst("^422 ", "")))
                .containsExactlyElementsOf(texts(problem.path("errors"), "at"));
    }

    /** Numbers by what they are worth, since C# writes 0 as 0.0; all else as it stands. */
    private static int byValue(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return Double.compare(one.doubleValue(), other.doubleValue());
        }
        return one.equals(other) ? 0 : 1;
    }

    /** Each element as a line of these fields and its message. */
    private static List<String> texts(JsonNode elements, String... fields) {
        assertThat(elements.size()).isPositive();
        return Stream.iterate(0, index -> index < elements.size(), index -> index + 1)
                .map(elements::path)
                .map(element -> Stream.concat(Stream.of(fields), Stream.of("message"))
                        .map(field -> element.path(field).asText())
                        .reduce((before, after) -> before + " " + after)
                        .orElseThrow())
                .toList();
    }

    /** C# spells its enumerations with a capital letter. */
    private static String lowerFirstWord(String line) {
        int end = line.indexOf(' ');
        return line.substring(0, end).toLowerCase(Locale.ROOT) + line.substring(end);
    }

    /** Lays a client where the README has it. */
    private void take(String language) throws IOException {
        copy(clients.resolve(language), folder.resolve("clients").resolve(language));
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)));
            }
        }
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private Command command(String... words) {
        return Command.of(words).in(folder).within(LONGEST_BUILD_S);
    }

    private Command.Outcome run(String... words) {
        return command(words).run();
    }

    /** Nothing is downloaded: the client needs nothing beside the standard library. */
    private Command.Outcome go(String... words) {
        return command(words)
                .where("GOPROXY", "off")
                .where("GOFLAGS", "-mod=mod")
                .run();
    }

    private static void assertDone(Command.Outcome outcome) {
        assertThat(outcome.exitCode()).as(outcome.out() + outcome.err()).isZero();
    }
}
