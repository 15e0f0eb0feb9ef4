package trestle.examples;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A team's own web server: another origin than the service, with a folder of pages. */
final class PageServer implements AutoCloseable {
    private static final String PRINTED_SERVICE = "http://127.0.0.1:8080";
    private static final Map<String, String> MEDIA_TYPES =
            Map.of("html", "text/html", "css", "text/css", "js", "text/javascript");

    private final HttpServer server;
    private final Path folder;
    private String service = PRINTED_SERVICE;

    PageServer(Path folder) {
        this.folder = folder;
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        server.createContext("/", this::answer);
        server.start();
    }

    String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** The pages name the service where it usually is; here it is elsewhere. */
    void serviceIsAt(String url) {
        service = url;
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        Path file = folder.resolve(path.equals("/") ? "index.html" : path.substring(1));
        if (Files.isRegularFile(file)) {
            byte[] page =
                    Files.readString(file).replace(PRINTED_SERVICE, service).getBytes(StandardCharsets.UTF_8);
            String name = file.toString();
            String type = MEDIA_TYPES.get(name.substring(name.lastIndexOf('.') + 1));
            exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
        } else {
            exchange.sendResponseHeaders(404, -1);
        }
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
