package trestle.http;

import io.javalin.http.Context;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import trestle.binding.Nearest;

/** What a body is. */
final class MediaTypes {
    static final String JSON = "application/json";
    static final String NDJSON = "application/x-ndjson";
    static final String CSV = "text/csv";

    private static final String CHARSET = ";charset=";

    private MediaTypes() {}

    /** The type of a body as the header has it, for the framework fails on a charset that it does not know. */
    static String of(Context context) {
        return context.header("Content-Type");
    }

    /** Whether a body holds many requests; null stands for a type that is not given. */
    static boolean isBatch(String contentType) {
        return contentType != null
                && (bare(contentType).equals(NDJSON) || bare(contentType).equals(CSV));
    }

    /** Refuses a body that is no JSON. */
    static void requireJson(String contentType) {
        if (contentType == null || !bare(contentType).matches("application/(.+\\+)?json")) {
            throw new Denial(
                    Problems.Kind.UNSUPPORTED_MEDIA_TYPE,
                    "send the request as JSON with the header Content-Type: application/json, or many requests as "
                            + NDJSON
                            + " or "
                            + CSV);
        }
        String charset = charset(contentType).orElse("utf-8");
        if (!known(charset)) {
            throw new Denial(
                    Problems.Kind.UNSUPPORTED_MEDIA_TYPE,
                    "the charset \"" + Nearest.shortened(charset) + "\" is not known here: send JSON in UTF-8");
        }
    }

    /** Refuses a body that is packed: read as it stands it would only be a strange body. */
    static void requirePlain(Context context) {
        String packed = context.header("Content-Encoding");
        if (packed != null && !packed.strip().equalsIgnoreCase("identity")) {
            throw new Denial(Problems.Kind.UNSUPPORTED_MEDIA_TYPE, "send the body as it is, without Content-Encoding");
        }
    }

    private static boolean known(String charset) {
        try {
            return Charset.isSupported(charset);
        } catch (IllegalCharsetNameException noName) {
            return false;
        }
    }

    private static Optional<String> charset(String contentType) {
        String plain = contentType.toLowerCase(Locale.ROOT).replaceAll("[\\s\"']", "");
        int at = plain.indexOf(CHARSET);
        return at < 0
                ? Optional.empty()
                : Optional.of(plain.substring(at + CHARSET.length()).split(";", 2)[0]);
    }

    /** How a table is encoded, for spreadsheets offer much; UTF-8 where it is not said. */
    static Charset encoding(String contentType) {
        return switch (charset(contentType).orElse("utf-8")) {
            case "utf-8", "us-ascii" -> StandardCharsets.UTF_8;
            case "iso-8859-1", "windows-1252" -> Charset.forName("windows-1252");
            default ->
                throw new Denial(
                        Problems.Kind.UNSUPPORTED_MEDIA_TYPE,
                        "send the table in UTF-8; spreadsheets offer that when saving CSV");
        };
    }

    /** A media type without its parameters. */
    static String bare(String type) {
        return type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
    }
}
