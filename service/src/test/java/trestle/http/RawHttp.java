package trestle.http;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** Requests written by hand, as no HTTP library would send them. */
public final class RawHttp {
    private RawHttp() {}

    /** The status that a request line gets. */
    public static int statusOf(String requestLine) {
        URI address = URI.create(LiveService.address());
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(10_000);
            String request = requestLine + "\r\nHost: localhost\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            BufferedReader answer =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            return Integer.parseInt(answer.readLine().split(" ")[1]);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Everything that comes back for some bytes, to the end of the connection. */
    public static String answerTo(String request) {
        return answerTo(URI.create(LiveService.address()).getPort(), request);
    }

    /** The same of a service of the test's own. */
    static String answerTo(int port, String request) {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
