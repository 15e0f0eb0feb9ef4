package trestle.propulsion;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the CSV files below {@code reference/}: comma separated, one header line. */
final class ReferenceRows {
    private ReferenceRows() {}

    static List<String[]> of(String resource) {
        try (InputStream in = ReferenceRows.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
