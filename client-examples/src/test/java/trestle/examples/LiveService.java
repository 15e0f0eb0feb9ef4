package trestle.examples;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import trestle.http.Service;
import trestle.http.Settings;

/** The real service on a free port, started once for all examples. */
final class LiveService {
    private static final Service SERVICE = Service.start(Settings.onAFreePort());
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private LiveService() {}

    static String url() {
        return "http://127.0.0.1:" + SERVICE.port();
    }

    /** Where nobody listens. */
    static String urlOfNobody() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return "http://127.0.0.1:" + socket.getLocalPort();
        }
    }

    /** The names of all calculations. */
    static List<String> calculations() {
        HttpRequest index = HttpRequest.newBuilder(URI.create(url() + "/v1")).build();
        return ask(index).path("calculations").findValuesAsText("name");
    }

    /** The request that the service gives as an example of a calculation. */
    static ObjectNode example(String calculation) {
        return (ObjectNode) ask(to(calculation + "/example").GET().build());
    }

    /** The answer to a request. */
    static ObjectNode answer(String calculation, JsonNode request) {
        return (ObjectNode) ask(to(calculation)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(request.toString()))
                .build());
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(url() + "/v1/" + path));
    }

    private static JsonNode ask(HttpRequest request) {
        try {
            return MAPPER.readTree(CLIENT.send(request, BodyHandlers.ofString()).body());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError(interrupted);
        }
    }
}
