package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Runs a Python example as a user does. */
final class Python {
    private static final Path SCRIPTS = Path.of("python");

    /** An example takes a second; this is for a machine that is busy with other things. */
    private static final int LONGEST_RUN_S = 60;

    private static final boolean INSTALLED = installed();

    private Python() {}

    /**
     * What a run left behind.
     *
     * @param exitCode its exit code
     * @param out what it printed
     * @param err what it complained about
     */
    record Outcome(int exitCode, String out, String err) {}

    /** Runs a script against a service that the environment names, as {@code TRESTLE_URL}. */
    static Outcome run(String url, String script, String... arguments) {
        return run(Map.of("TRESTLE_URL", url), script, arguments);
    }

    /** Runs a script; without Python the test is skipped, but not in the build that decides. */
    static Outcome run(Map<String, String> environment, String script, String... arguments) {
        if ("true".equals(System.getenv("CI"))) {
            assertThat(INSTALLED).as("CI needs python3 to run the client examples").isTrue();
        }
        assumeTrue(INSTALLED, "no python3 on this machine: the client examples are not run");
        List<String> command = new ArrayList<>(List.of("python3"));
        command.add(SCRIPTS.resolve(script).toString());
        command.addAll(List.of(arguments));
        return outcome(command, environment);
    }

    private static Outcome outcome(List<String> command, Map<String, String> environment) {
        try {
            File out = Files.createTempFile("example", ".out").toFile();
            File err = Files.createTempFile("example", ".err").toFile();
            ProcessBuilder builder =
                    new ProcessBuilder(command).redirectOutput(out).redirectError(err);
            settle(builder.environment());
            builder.environment().putAll(environment);
            Process process = builder.start();
            if (!process.waitFor(LONGEST_RUN_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(command + " still runs after " + LONGEST_RUN_S + " s");
            }
            return new Outcome(process.exitValue(), textOf(out), textOf(err));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError(interrupted);
        }
    }

    /** The same output on every machine, and no proxy between the script and this machine. */
    private static void settle(Map<String, String> environment) {
        environment
                .keySet()
                .removeIf(
                        name ->
                                name.toLowerCase(Locale.ROOT).endsWith("_proxy")
                                        || name.equals("TRESTLE_URL"));
        environment.put("PYTHONIOENCODING", "utf-8");
        environment.put("PYTHONDONTWRITEBYTECODE", "1");
        environment.put("COLUMNS", "100");
    }

    private static String textOf(File file) throws IOException {
        String text = Files.readString(file.toPath(), StandardCharsets.UTF_8);
        Files.delete(file.toPath());
        return text;
    }

    private static boolean installed() {
        try {
            Process process =
                    new ProcessBuilder("python3", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start();
            return process.waitFor() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
