package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;

/** What {@code generated/generate.sh} writes. */
final class GeneratedClients {
    private static final Path HOME = Path.of("generated").toAbsolutePath();

    /** A Maven within a Maven, on a machine that is busy with other things. */
    private static final int LONGEST_GENERATION_S = 300;

    /** Shows a program for each of them. */
    static final Readme README = new Readme(HOME.resolve("README.md"));

    private GeneratedClients() {}

    /** Writes the clients into a folder of this build. */
    static Path generate() {
        Tool.need("bash", "mvn");
        Path folder = Path.of("target", "clients").toAbsolutePath();
        Command.Outcome outcome = generate(folder.toString());
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(outcome.out().lines())
                .containsExactly(folder + "/python", folder + "/typescript", folder + "/csharp", folder + "/go");
        return folder;
    }

    /** Runs the command with what a user types after it. */
    static Command.Outcome generate(String... arguments) {
        return Command.of("bash", HOME.resolve("generate.sh").toString())
                .with(arguments)
                .within(LONGEST_GENERATION_S)
                .run();
    }
}
