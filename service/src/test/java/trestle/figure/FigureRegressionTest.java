package trestle.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Our own earlier pictures, byte for byte. Where one differs, the new one is written below target/
 * to be looked at; only then may it take the old one's place.
 */
class FigureRegressionTest {
    static Stream<String> names() {
        return Samples.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void figureIsTheOneThatWasLookedAt(String name) throws IOException {
        holds(name, Samples.figure(name, Theme.LIGHT));
    }

    @Test
    void darkAndAutoAreTheOnesThatWereLookedAt() throws IOException {
        holds("rails-dark", Samples.figure("rails", Theme.DARK));
        holds("rails-auto", Samples.figure("rails", Theme.AUTO));
    }

    private static void holds(String name, String drawn) throws IOException {
        Path newOne = Path.of("target", "figures", name + ".svg");
        Files.createDirectories(newOne.getParent());
        Files.writeString(newOne, drawn);
        try (InputStream kept = FigureRegressionTest.class.getResourceAsStream(name + ".svg")) {
            assertThat(kept).as("a kept picture %s.svg", name).isNotNull();
            assertThat(drawn)
                    .as("%s; the new picture is %s", name, newOne)
                    .isEqualTo(new String(kept.readAllBytes(), StandardCharsets.UTF_8));
        }
    }
}
