package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;

/** What an example needs beside Java. Without it the test is skipped, but not in CI. */
final class Tool {
    private static final boolean DECIDES = "true".equals(System.getenv("CI"));

    private Tool() {}

    /** Asks for programs that are found by their name. */
    static void need(String... programs) {
        for (String program : programs) {
            need(installed(program), program + " is not installed");
        }
    }

    /**
     * Asks for something else.
     *
     * @param here whether it is there
     * @param otherwise what to say if it is not
     */
    static void need(boolean here, String otherwise) {
        if (DECIDES) {
            assertThat(here).as("CI runs every example, but " + otherwise).isTrue();
        }
        assumeTrue(here, otherwise + ", so this example is not run");
    }

    private static boolean installed(String program) {
        for (String place : System.getenv("PATH").split(File.pathSeparator)) {
            if (Files.isExecutable(Path.of(place, program))) {
                return true;
            }
        }
        return false;
    }
}
