package trestle.http;

import io.javalin.http.Context;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.EofException;

/** The body of one request, read to its end. */
final class WholeBody {
    private WholeBody() {}

    /**
     * Reads a body.
     *
     * @param context the exchange
     * @return its bytes
     * @throws Denial when it breaks off, or stops coming
     */
    static byte[] of(Context context) {
        try {
            return context.bodyAsBytes();
        } catch (Exception unread) {
            // The framework is no Java: it throws checked exceptions that it does not declare.
            if (behind(unread, TimeoutException.class)) {
                throw new Denial(Problems.Kind.TIMEOUT, "the body stopped coming before its end");
            }
            if (behind(unread, EofException.class)) {
                throw new Denial(
                        Problems.Kind.MALFORMED_BODY,
                        "the body broke off: it is shorter than it says, or its chunks are wrong");
            }
            throw unread;
        }
    }

    private static boolean behind(Throwable failure, Class<?> reason) {
        return reason.isInstance(failure) || (failure.getCause() != null && behind(failure.getCause(), reason));
    }
}
