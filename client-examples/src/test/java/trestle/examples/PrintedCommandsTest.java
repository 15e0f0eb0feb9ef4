package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Commands that these pages tell a reader to type. */
class PrintedCommandsTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern PUBLISHED = Pattern.compile("(?:-p|--publish)[ =](\\S+)");

    /** A bare port is published to every network that the machine is in. */
    @Test
    void aContainerIsPublishedToThisMachineOnly() throws IOException {
        List<String> ports = pages().flatMap(PrintedCommandsTest::lines)
                .filter(line -> line.contains("docker run"))
                .flatMap(line -> PUBLISHED.matcher(line).results())
                .map(published -> published.group(1))
                .toList();

        assertThat(ports).hasSizeGreaterThanOrEqualTo(2).allMatch(port -> port.startsWith("127.0.0.1:"));
    }

    /** {@code --json} needs curl 7.82, of 2022. */
    @Test
    void anyCurlOfTheLastYearsDoes() throws IOException {
        List<String> calls = pages().flatMap(PrintedCommandsTest::lines)
                .filter(line -> line.contains("curl "))
                .toList();

        assertThat(calls).hasSizeGreaterThan(10).noneMatch(line -> line.contains("--json"));
    }

    private static Stream<Path> pages() throws IOException {
        List<Path> pages;
        try (Stream<Path> examples = Files.walk(Path.of(""), 2)) {
            pages = examples.filter(page -> page.getFileName().toString().matches("README\\.md|.*\\.sh"))
                    .toList();
        }
        return Stream.concat(
                Stream.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"), ROOT.resolve("Dockerfile")),
                pages.stream());
    }

    private static Stream<String> lines(Path page) {
        try {
            // A line that goes on is one command.
            return Files.readString(page).replaceAll("\\\\\\R#?", " ").lines();
        } catch (IOException failure) {
            throw new AssertionError(page + " cannot be read", failure);
        }
    }
}
