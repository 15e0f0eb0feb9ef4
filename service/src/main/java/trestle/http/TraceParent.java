package trestle.http;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The trace that a request belongs to, as the header {@code traceparent} has it.
 *
 * @param trace the trace, 32 hexadecimal digits
 * @param flags two hexadecimal digits, the caller's
 * @see "Trace Context, W3C Recommendation, 23 November 2021, section 3.2"
 */
record TraceParent(String trace, String flags) {
    static final String HEADER = "traceparent";

    /** Later versions may add to the end, after a dash; version ff is none. */
    private static final Pattern FORM =
            Pattern.compile("(?!ff)([0-9a-f]{2})-(?!0{32})([0-9a-f]{32})-(?!0{16})[0-9a-f]{16}-([0-9a-f]{2})(-.*)?");

    private static final int LONGEST = 200;
    private static final String VERSION = "00";

    /**
     * Reads the header; what is malformed counts as absent, as the recommendation has it.
     *
     * @param header its value, or null
     * @return the trace, if there is one
     */
    static Optional<TraceParent> of(String header) {
        if (header == null || header.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher read = FORM.matcher(header.strip());
        boolean whole =
                read.matches() && (read.group(4) == null || !read.group(1).equals(VERSION));
        return whole ? Optional.of(new TraceParent(read.group(2), read.group(3))) : Optional.empty();
    }

    /** The header that passes the trace on, with a step of it in the place of the caller's. */
    String passedOn(String step) {
        return VERSION + "-" + trace + "-" + step + "-" + flags;
    }
}
