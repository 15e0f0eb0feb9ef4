package trestle.http;

import io.javalin.http.Context;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.numeric.Decimal;

/**
 * One line a request: method, path, status, time. Never a query or a body: they are the caller's.
 */
final class RequestLog {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.request");

    private RequestLog() {}

    static void write(Context context, Float milliseconds) {
        if (LOG.isInfoEnabled()) {
            LOG.info(
                    "{} {} {} {} ms",
                    context.method(),
                    printable(context.path()),
                    context.statusCode(),
                    Decimal.fixed(milliseconds, 1));
        }
    }

    /** A path is the caller's text: line breaks in it must not forge lines of the log. */
    private static String printable(String path) {
        String plain = path.replaceAll("[^\\x21-\\x7e]", "?");
        return plain.length() <= 200 ? plain : plain.substring(0, 200) + "…";
    }
}
