package trestle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The files by which the service is run for others, as far as they can be held without systemd or a container engine. */
@Timeout(120)
class DeployIT {
    private static final Path DEPLOY = Path.of("deploy");
    private static final String JAVA = System.getProperty("java.home") + "/bin/java";
    private static final String TOKEN = "a-token-of-this-test";
    private static final Pattern VARIABLE = Pattern.compile("TRESTLE_[A-Z_]+");

    /** What systemd's checker gives of ten: below 2 it says OK. */
    private static final String MOST_EXPOSED = "20";

    @TempDir
    private Path folder;

    private static String unit() throws IOException {
        return Files.readString(DEPLOY.resolve("trestle.service"));
    }

    /** The values of a setting, without what systemd fills in. */
    private static List<String> settings(String name) throws IOException {
        return unit().lines()
                .filter(line -> line.startsWith(name + "="))
                .map(line -> line.substring(name.length() + 1))
                .toList();
    }

    private record Ran(int code, String said) {}

    private static Ran run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        return new Ran(process.waitFor(), said);
    }

    private static boolean isHere(String tool) {
        return Arrays.stream(System.getenv("PATH").split(":"))
                .anyMatch(place -> Files.isExecutable(Path.of(place, tool)));
    }

    @Test
    void systemdTakesTheUnitAndFindsItTight() throws Exception {
        assumeThat(isHere("systemd-analyze")).as("systemd-analyze").isTrue();
        Path unit = folder.resolve("trestle.service");
        Files.writeString(unit, unit().replace("/usr/bin/java", JAVA));
        Ran verified = run(List.of("systemd-analyze", "verify", "--man=no", unit.toString()));
        assertThat(verified.said().lines().filter(line -> line.contains("trestle")))
                .isEmpty();
        Ran exposure = run(List.of(
                "systemd-analyze", "security", "--offline=true", "--threshold=" + MOST_EXPOSED, unit.toString()));
        assertThat(exposure.code()).as(exposure.said()).isZero();
    }

    /** Its options are Java's and ours, and it asks for the token that systemd hands it. */
    @Test
    void theCommandOfTheUnitStartsTheService() throws Exception {
        Path token = Files.writeString(folder.resolve("token"), TOKEN + "\n");
        List<String> command = new ArrayList<>();
        for (String word : settings("ExecStart").get(0).split(" ")) {
            command.add(word.replace("/usr/bin/java", JAVA).replace("/opt/trestle", "target"));
        }
        ProcessBuilder builder = new ProcessBuilder(command);
        for (String line : settings("Environment")) {
            for (String variable : line.split(" ")) {
                String[] halves = variable.split("=", 2);
                builder.environment().put(halves[0], halves[1].replace("%d/token", token.toString()));
            }
        }
        builder.environment().put("TRESTLE_PORT", "0");
        Path said = folder.resolve("said");
        Path log = folder.resolve("log");
        Process service = builder.redirectOutput(said.toFile())
                .redirectError(log.toFile())
                .start();
        try {
            URI address = address(service, said);
            HttpClient client = HttpClient.newHttpClient();
            HttpRequest.Builder index = HttpRequest.newBuilder(address.resolve("/v1"));
            assertThat(client.send(index.build(), HttpResponse.BodyHandlers.ofString())
                            .statusCode())
                    .isEqualTo(401);
            index.header("Authorization", "Bearer " + TOKEN);
            assertThat(client.send(index.build(), HttpResponse.BodyHandlers.ofString())
                            .statusCode())
                    .isEqualTo(200);
        } finally {
            service.destroy();
            assertThat(service.waitFor(20, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(String.valueOf(service.exitValue()))
                .isEqualTo(settings("SuccessExitStatus").get(0));
        assertThat(Files.readAllLines(log)).isNotEmpty().allMatch(line -> line.startsWith("{\"time\":"));
    }

    private static URI address(Process service, Path said) throws IOException, InterruptedException {
        Pattern line = Pattern.compile("listens on (http://\\S+)");
        for (int i = 0; i < 600 && service.isAlive(); i++) {
            Matcher found = line.matcher(Files.readString(said));
            if (found.find()) {
                return URI.create(found.group(1));
            }
            Thread.sleep(100);
        }
        throw new AssertionError("the service did not start");
    }

    @Test
    void theContainerHasNothingThatItDoesNotNeed() throws IOException {
        JsonNode file = new YAMLMapper().readTree(DEPLOY.resolve("compose.yaml").toFile());
        JsonNode service = file.at("/services/trestle");
        assertThat(service.path("read_only").asBoolean()).isTrue();
        assertThat(service.at("/cap_drop/0").asText()).isEqualTo("ALL");
        assertThat(service.at("/security_opt/0").asText()).isEqualTo("no-new-privileges:true");
        assertThat(service.path("mem_limit").asText())
                .matches("[0-9]+m")
                .isEqualTo(service.path("memswap_limit").asText());
        assertThat(service.at("/ports/0").asText()).startsWith("127.0.0.1:");
        assertThat(service.path("user").asText()).matches("[1-9][0-9]*:[1-9][0-9]*");
        assertThat(DEPLOY.resolve(service.path("build").asText()).resolve("Dockerfile"))
                .exists();
        assertThat(file.at("/secrets/token/file").asText()).isEqualTo("./token");
        assertThat(service.at("/environment/TRESTLE_TOKEN_FILE").asText())
                .isEqualTo("/run/secrets/" + service.at("/secrets/0").asText());
    }

    /** Where the engine's own tool is at hand, it reads the file too; it needs no engine for that. */
    @Test
    void composeTakesTheFile() throws Exception {
        assumeThat(isHere("docker")
                        && run(List.of("docker", "compose", "version")).code() == 0)
                .as("docker compose")
                .isTrue();
        Ran read = run(List.of(
                "docker", "compose", "-f", DEPLOY.resolve("compose.yaml").toString(), "config", "--quiet"));
        assertThat(read.code()).as(read.said()).isZero();
    }

    @Test
    void theServiceKnowsEveryVariableAndTheGuideEveryLimit() throws IOException {
        StringWriter help = new StringWriter();
        new CommandLine(new Main()).setOut(new PrintWriter(help)).execute("--help");
        TreeSet<String> known = new TreeSet<>();
        VARIABLE.matcher(help.toString()).results().forEach(found -> known.add(found.group()));
        assertThat(known).hasSizeGreaterThan(8);
        for (String name : List.of("trestle.service", "compose.yaml", "README.md")) {
            String text = Files.readString(DEPLOY.resolve(name));
            assertThat(VARIABLE.matcher(text).results().map(found -> found.group()))
                    .as(name)
                    .isSubsetOf(known);
        }
        String guide = Files.readString(DEPLOY.resolve("README.md"));
        Matcher options = Pattern.compile("--max-[a-z-]+|--allowed-[a-z-]+|--token-file|--log")
                .matcher(help.toString());
        assertThat(options.results().map(found -> found.group())).allMatch(guide::contains);
    }
}
