package trestle.endpoint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trestle.catalogue.Catalogue;
import trestle.figure.Theme;

class DrawnTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static Stream<Calculation<?, ?, ?, ?>> drawn() {
        return Catalogue.calculations().stream();
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void figureOfTheExampleHasItsTheme(Calculation<?, ?, ?, ?> calculation) throws IOException {
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            assertThat(figure(calculation, theme))
                    .startsWith("<svg ")
                    .contains("class=\"trestle-" + theme.name().toLowerCase(java.util.Locale.ROOT))
                    .endsWith("</svg>\n");
        }
    }

    private static <Q, R, W> String figure(Calculation<Q, R, W, ?> calculation, Theme theme) throws IOException {
        Q request = MAPPER.treeToValue(example(calculation.name()), calculation.requestType());
        return calculation.figure(calculation.done(request), theme);
    }

    private static JsonNode example(String name) throws IOException {
        Path folder = Path.of("..", "api-spec", "examples", name);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.request.json")) {
            return MAPPER.readTree(Files.readString(files.iterator().next())).get("value");
        }
    }
}
