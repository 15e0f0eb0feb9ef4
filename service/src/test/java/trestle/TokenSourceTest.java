package trestle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the token comes from, and that a start without one that was meant does not happen. */
class TokenSourceTest {
    private static final String TOKEN = "0123456789abcdef";

    @TempDir
    private Path folder;

    private Path file(String content) throws IOException {
        return Files.writeString(folder.resolve("token"), content);
    }

    @Test
    void noneIsAskedForWhereNoneIsNamed() {
        assertThat(TokenSource.read(null, Map.of())).isEmpty();
    }

    @Test
    void itComesFromAFileWithALineEndOrFromTheEnvironment() throws IOException {
        String header = "Bearer " + TOKEN;
        assertThat(TokenSource.read(file(TOKEN + "\r\n"), Map.of())
                        .orElseThrow()
                        .authorization())
                .isEqualTo(header);
        assertThat(TokenSource.read(null, Map.of("TRESTLE_TOKEN", TOKEN))
                        .orElseThrow()
                        .authorization())
                .isEqualTo(header);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "123456789abcdef",
                "0123456789abcdef 0123",
                "0123456789abcdé0123",
                "=================",
                "0123456789abcdef\n0123456789abcdef"
            })
    void whatNoHeaderCarriesOrAnybodyGuessesIsRefusedAndNotRepeated(String content) throws IOException {
        Path file = file(content);
        assertThatThrownBy(() -> TokenSource.read(file, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("16 to 512")
                .satisfies(refused -> assertThat(refused.getMessage()).doesNotContain("0123", "56789"));
        assertThatThrownBy(() -> TokenSource.read(null, Map.of("TRESTLE_TOKEN", content)))
                .hasMessageContaining("TRESTLE_TOKEN");
    }

    @Test
    void aFileThatIsNotThereOrHoldsMoreIsRefused() throws IOException {
        assertThatThrownBy(() -> TokenSource.read(folder.resolve("none"), Map.of()))
                .hasMessageContaining("cannot be read");
        Path large = file("a".repeat(5000));
        assertThatThrownBy(() -> TokenSource.read(large, Map.of())).hasMessageContaining("more than a token");
    }

    @Test
    void twoSourcesAreOneTooMany() throws IOException {
        Path file = file(TOKEN);
        assertThatThrownBy(() -> TokenSource.read(file, Map.of("TRESTLE_TOKEN", TOKEN)))
                .hasMessageContaining("not by both");
    }
}
