package trestle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import trestle.http.AccessToken;

/** Where the token comes from: a file or the environment. Not an option, which every user of the machine can list. */
final class TokenSource {
    static final String VARIABLE = "TRESTLE_TOKEN";

    /** No file of a token is longer. */
    private static final long MOST_BYTES = 4096;

    private TokenSource() {}

    /**
     * Reads the token.
     *
     * @param file that holds it and a line end at most; null where none is named
     * @param environment the environment's variables
     * @return the token; empty where none is asked for
     * @throws IllegalArgumentException where one is asked for and cannot be had, without what was read
     */
    static Optional<AccessToken> read(Path file, Map<String, String> environment) {
        String named = environment.get(VARIABLE);
        if (file != null && named != null) {
            throw new IllegalArgumentException("give the token by a file or by " + VARIABLE + ", not by both");
        }
        if (file != null) {
            return Optional.of(token(content(file), "the file " + file));
        }
        return Optional.ofNullable(named).map(value -> token(value, VARIABLE));
    }

    /** An empty one is refused too: it comes from a variable that somebody forgot to set. */
    private static AccessToken token(String value, String source) {
        try {
            return AccessToken.of(value.strip());
        } catch (IllegalArgumentException unfit) {
            throw new IllegalArgumentException(source + ": " + unfit.getMessage(), unfit);
        }
    }

    private static String content(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new IllegalArgumentException("the file " + file + " holds more than a token");
            }
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new IllegalArgumentException("the file " + file + " cannot be read as a token", unreadable);
        }
    }
}
