package trestle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Locale;

/**
 * The main job once, as a caller would do it: fetch the example aircraft, post it, read the answer.
 */
final class Demo {
    private static final int LABEL_WIDTH = 28;

    private Demo() {}

    /**
     * Posts the example aircraft to the running service.
     *
     * @param address where the service listens
     * @return the verdict, the findings and the key figures as text
     */
    static String run(String address) {
        HttpClient client = HttpClient.newHttpClient();
        try {
            String review = address + "/v1/build-review";
            HttpRequest example = HttpRequest.newBuilder(URI.create(review + "/example")).build();
            HttpResponse<String> document = client.send(example, BodyHandlers.ofString());
            HttpRequest post =
                    HttpRequest.newBuilder(URI.create(review))
                            .header("Content-Type", "application/json")
                            .POST(BodyPublishers.ofString(document.body()))
                            .build();
            String answer = client.send(post, BodyHandlers.ofString()).body();
            return text(new ObjectMapper().readTree(answer));
        } catch (IOException unreachable) {
            return "the demo could not reach the service: " + unreachable.getMessage() + "\n";
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return "";
        }
    }

    private static String text(JsonNode answer) {
        StringBuilder text = new StringBuilder();
        line(text, "verdict", answer.path("verdict").asText());
        for (JsonNode finding : answer.path("findings")) {
            text.append("  ")
                    .append(finding.path("severity").asText())
                    .append(": ")
                    .append(finding.path("message").asText())
                    .append(" [")
                    .append(finding.path("at").asText())
                    .append("]\n");
        }
        answer.path("key_figures")
                .properties()
                .forEach(
                        figure ->
                                line(
                                        text,
                                        figure.getKey(),
                                        String.format(
                                                Locale.ROOT,
                                                "%.4g",
                                                figure.getValue().asDouble())));
        return text.toString();
    }

    private static void line(StringBuilder text, String label, String value) {
        text.append(String.format(Locale.ROOT, "%-" + LABEL_WIDTH + "s %s%n", label, value));
    }
}
