package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands of the README, typed as printed against the live service, and their printed answers
 * compared. With {@code -Dreadme.update=true} the answers are written anew: read the difference
 * before you commit it.
 */
class ReadmeTest {
    private static final Path README = Path.of("..", "README.md");
    private static final String PRINTED_ADDRESS = "http://127.0.0.1:8080";
    private static final int LONGEST_RUN_S = 60;

    /** A command and the answer printed under it. */
    private static final Pattern TOUR = Pattern.compile("```sh\\n([^`]*)```\\n```text\\n([^`]*)```");

    @TempDir
    Path folder;

    @Test
    void everyPrintedAnswerIsTodays() throws IOException, InterruptedException {
        for (String tool : List.of("bash", "curl", "jq", "python3")) {
            boolean here = installed(tool);
            if ("true".equals(System.getenv("CI"))) {
                assertThat(here)
                        .as(tool + " is installed where the build decides")
                        .isTrue();
            }
            assumeTrue(here, tool + " is not installed, so the README's tour is not run");
        }
        Files.createSymbolicLink(folder.resolve("client-examples"), Path.of("").toAbsolutePath());
        String readme = Files.readString(README);
        StringBuilder updated = new StringBuilder();
        Matcher tour = TOUR.matcher(readme);
        List<String> commands = new ArrayList<>();
        while (tour.find()) {
            String answer = run(tour.group(1));
            commands.add(tour.group(1));
            if (!Boolean.getBoolean("readme.update")) {
                assertThat(answer).as(tour.group(1)).isEqualTo(tour.group(2));
            }
            tour.appendReplacement(
                    updated, Matcher.quoteReplacement("```sh\n" + tour.group(1) + "```\n```text\n" + answer + "```"));
        }
        tour.appendTail(updated);
        assertThat(commands).hasSizeGreaterThanOrEqualTo(6);
        if (Boolean.getBoolean("readme.update")) {
            Files.writeString(README, updated);
        }
    }

    private String run(String command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(
                "bash", "-euo", "pipefail", "-c", command.replace(PRINTED_ADDRESS, LiveService.url()));
        builder.environment().put("TRESTLE_URL", LiveService.url());
        builder.directory(folder.toFile());
        File out = folder.resolve("out.txt").toFile();
        Process process = builder.redirectErrorStream(true).redirectOutput(out).start();
        assertThat(process.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)).as(command).isTrue();
        String said = Files.readString(out.toPath(), StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(command + said).isZero();
        // Rows of CSV end in CR LF, which a terminal shows as the end of a line.
        return said.replace(LiveService.url(), PRINTED_ADDRESS).replace("\r\n", "\n");
    }

    private static boolean installed(String tool) {
        for (String place : System.getenv("PATH").split(File.pathSeparator)) {
            if (Files.isExecutable(Path.of(place, tool))) {
                return true;
            }
        }
        return false;
    }
}
