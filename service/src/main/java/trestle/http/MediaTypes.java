package trestle.http;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What a body is. */
final class MediaTypes {
    static final String JSON = "application/json";
    static final String NDJSON = "application/x-ndjson";
    static final String CSV = "text/csv";

    private static final String CHARSET = ";charset=";

    private MediaTypes() {}

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
    }

    /** How a table is encoded, for spreadsheets offer much; UTF-8 where it is not said. */
    static Charset encoding(String contentType) {
        String plain = contentType.toLowerCase(Locale.ROOT).replaceAll("[\\s\"']", "");
        int at = plain.indexOf(CHARSET);
        if (at < 0) {
            return StandardCharsets.UTF_8;
        }
        return switch (plain.substring(at + CHARSET.length()).split(";", 2)[0]) {
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
