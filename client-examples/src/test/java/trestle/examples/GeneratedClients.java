package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What {@code generated/generate.sh} writes, and the programs that its README shows with them. */
final class GeneratedClients {
    private static final Path HOME = Path.of("generated").toAbsolutePath();
    private static final String PRINTED_ADDRESS = "http://127.0.0.1:8080";

    /** A Maven within a Maven, on a machine that is busy with other things. */
    private static final int LONGEST_GENERATION_S = 300;

    private GeneratedClients() {}

    /** Writes the clients into a folder of this build. */
    static Path generate() {
        Tool.need("bash", "mvn");
        Path folder = Path.of("target", "clients").toAbsolutePath();
        Command.Outcome outcome = generate(folder.toString());
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(outcome.out().lines())
                .containsExactly(
                        folder + "/python",
                        folder + "/typescript",
                        folder + "/csharp",
                        folder + "/go");
        return folder;
    }

    /** Runs the command with what a user types after it. */
    static Command.Outcome generate(String... arguments) {
        return Command.of("bash", HOME.resolve("generate.sh").toString())
                .with(arguments)
                .within(LONGEST_GENERATION_S)
                .run();
    }

    /** A text that the README shows in a language, with the live service for the printed one. */
    static String shown(String language) {
        Matcher block =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(readme());
        assertThat(block.results()).as("texts in " + language).hasSize(1);
        block.reset();
        block.find();
        return block.group(1).replace(PRINTED_ADDRESS, LiveService.url());
    }

    /** The commands that the README gives above a text in a language. */
    static String commandsBefore(String language) {
        Matcher block =
                Pattern.compile("```sh\n([^`]*)```\\s*```" + language + "\n").matcher(readme());
        assertThat(block.find()).as("commands above " + language).isTrue();
        return block.group(1);
    }

    private static String readme() {
        try {
            return Files.readString(HOME.resolve("README.md"));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
