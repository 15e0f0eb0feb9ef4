package trestle;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLConnection;
import java.util.Optional;
import trestle.http.AccessToken;

/**
 * Asks the running service as a caller would. By the plainest client there is: the newer one sets
 * up encryption before it asks anything.
 *
 * @param address where the service listens
 * @param token what it asks for, if anything
 */
record Caller(String address, Optional<AccessToken> token) {
    private static final String JSON = "application/json";

    /** The body of an answer. */
    byte[] get(String path) throws IOException {
        return answer(connection(path));
    }

    /** The body of an answer; an {@link IOException} where the service refuses. */
    byte[] post(String path, byte[] document) throws IOException {
        URLConnection connection = connection(path);
        connection.setRequestProperty("Content-Type", JSON);
        connection.setDoOutput(true);
        try (OutputStream body = connection.getOutputStream()) {
            body.write(document);
        }
        return answer(connection);
    }

    private URLConnection connection(String path) throws IOException {
        URLConnection connection = new URL(address + path).openConnection();
        connection.setRequestProperty("Accept", JSON);
        token.ifPresent(known -> connection.setRequestProperty("Authorization", known.authorization()));
        return connection;
    }

    private static byte[] answer(URLConnection asked) throws IOException {
        try (InputStream answer = asked.getInputStream()) {
            return answer.readAllBytes();
        }
    }
}
