package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What a README shows, with the address of the live service for the printed one.
 *
 * @param file the README
 */
record Readme(Path file) {
    private static final String PRINTED_ADDRESS = "http://127.0.0.1:8080";

    /** The one text that it shows in a language. */
    String shown(String language) {
        return only("```" + language + "\n(.*?)```").group(1);
    }

    /** The one set of commands right above a text in a language. */
    String commandsBefore(String language) {
        return only("```sh\n([^`]*)```\\s*```" + language + "\n").group(1);
    }

    /** What it prints right under its one set of commands with an answer. */
    String answer() {
        return only("```sh\n[^`]*```\\s*```text\n([^`]*)```").group(1);
    }

    private MatchResult only(String pattern) {
        List<MatchResult> found = Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(text())
                .results()
                .toList();
        assertThat(found).as(pattern + " in " + file).hasSize(1);
        return found.get(0);
    }

    private String text() {
        try {
            return Files.readString(file).replace(PRINTED_ADDRESS, LiveService.url());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
