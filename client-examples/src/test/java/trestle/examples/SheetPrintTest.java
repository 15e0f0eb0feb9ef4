package trestle.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheet to print and file: five legible pages at most, whatever the launch, on either paper. */
class SheetPrintTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double A4_WIDTH_IN = 8.27;
    private static final double A4_HEIGHT_IN = 11.69;
    private static final double LETTER_WIDTH_IN = 8.5;
    private static final double LETTER_HEIGHT_IN = 11;
    private static final double PT_PER_PX = 0.75;

    /** What the sheet promises, but for the last bits of a product. */
    private static final double LEGIBLE_PT = 7.999;

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"kind\": \"hand\", \"release_speed_m_per_s\": 9, \"angle_deg\": 8}",
                "{\"kind\": \"hand\", \"release_speed_m_per_s\": 6}",
                "{\"kind\": \"bungee\", \"stiffness_n_per_m\": 14, \"stretch_m\": 15}",
                "{\"kind\": \"dolly\", \"rolling_resistance\": 0.05}"
            })
    void theSheetHasFivePagesAtMost(String launch) throws IOException, InterruptedException {
        Browser browser = Browser.shared();
        URI review = URI.create(LiveService.url() + "/v1/build-review");
        String example = ask(HttpRequest.newBuilder(URI.create(review + "/example")));
        ObjectNode aircraft = (ObjectNode) MAPPER.readTree(example);
        ((ObjectNode) aircraft.path("flight")).set("launch", MAPPER.readTree(launch));
        String sheet = ask(HttpRequest.newBuilder(URI.create(review + "?as=html"))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(aircraft.toString())));
        Path file = Files.writeString(folder.resolve("sheet.html"), sheet);

        browser.open(file.toUri().toString());

        assertThat(browser.printedPages(A4_WIDTH_IN, A4_HEIGHT_IN)).isBetween(3, 5);
        assertThat(browser.printedPages(LETTER_WIDTH_IN, LETTER_HEIGHT_IN)).isBetween(3, 5);
        assertThat(smallestText(browser)).isGreaterThanOrEqualTo(LEGIBLE_PT);
    }

    /** Of what is written beside the figures, pt, as printed. */
    private static double smallestText(Browser browser) {
        browser.media("print");
        Number px = browser.run("""
                const sizes = [...document.querySelectorAll('main *:not(svg, svg *)')]
                    .filter((element) => element.getClientRects().length > 0)
                    .filter((element) => [...element.childNodes].some((n) => n.nodeType === 3 && n.data.trim() !== ''))
                    .map((element) => parseFloat(getComputedStyle(element).fontSize));
                return Math.min(...sizes)
                """);
        browser.media("");
        return px.doubleValue() * PT_PER_PX;
    }

    private static String ask(HttpRequest.Builder request) throws IOException, InterruptedException {
        var answer = CLIENT.send(request.build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer.body();
    }
}
