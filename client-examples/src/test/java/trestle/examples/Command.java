package trestle.examples;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A command as a user types it.
 *
 * @param words the program and its arguments
 * @param folder where it is typed
 * @param environment what is set beside what this machine has set
 * @param longestS how long it may take, s
 */
record Command(List<String> words, Path folder, Map<String, String> environment, int longestS) {
    /** An example takes a second; this is for a machine that is busy with other things. */
    private static final int LONGEST_RUN_S = 60;

    /**
     * What a run left behind.
     *
     * @param exitCode its exit code
     * @param out what it printed
     * @param err what it complained about
     */
    record Outcome(int exitCode, String out, String err) {}

    Command {
        words = List.copyOf(words);
        environment = Map.copyOf(environment);
    }

    static Command of(String... words) {
        return new Command(List.of(words), Path.of(""), Map.of(), LONGEST_RUN_S);
    }

    /** The same command with more arguments. */
    Command with(String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(more));
        return new Command(all, folder, environment, longestS);
    }

    /** The same command typed elsewhere. */
    Command in(Path other) {
        return new Command(words, other, environment, longestS);
    }

    /** The same command with a variable set. */
    Command where(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(environment);
        more.put(name, value);
        return new Command(words, folder, more, longestS);
    }

    /** The same command with more time. */
    Command within(int seconds) {
        return new Command(words, folder, environment, seconds);
    }

    /** Runs it to its end. */
    Outcome run() {
        try {
            File out = Files.createTempFile("example", ".out").toFile();
            File err = Files.createTempFile("example", ".err").toFile();
            ProcessBuilder builder = new ProcessBuilder(words)
                    .directory(folder.toAbsolutePath().toFile())
                    .redirectOutput(out)
                    .redirectError(err);
            settle(builder.environment());
            builder.environment().putAll(environment);
            Process process = builder.start();
            if (!process.waitFor(longestS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(words + " still runs after " + longestS + " s");
            }
            return new Outcome(process.exitValue(), textOf(out), textOf(err));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError(interrupted);
        }
    }

    /** The same output on every machine, and no proxy between the example and this machine. */
    private static void settle(Map<String, String> environment) {
        environment
                .keySet()
                .removeIf(name -> name.toLowerCase(Locale.ROOT).endsWith("_proxy") || name.equals("TRESTLE_URL"));
        environment.put("LC_ALL", "C.UTF-8");
        environment.put("PYTHONIOENCODING", "utf-8");
        environment.put("PYTHONDONTWRITEBYTECODE", "1");
        environment.put("COLUMNS", "100");
    }

    private static String textOf(File file) throws IOException {
        String text = Files.readString(file.toPath(), StandardCharsets.UTF_8);
        Files.delete(file.toPath());
        return text;
    }
}
