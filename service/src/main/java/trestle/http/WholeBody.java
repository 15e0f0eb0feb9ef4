package trestle.http;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/** The body of one request, read to its end. */
final class WholeBody {
    /** A sender holds a place while its body comes: one that lets it drip gives it back. */
    private static final long LEAST_BYTES_PER_S = 1000;

    /** A slow line may take this long to begin. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private static final int PIECE = 8192;
    private static final int MOST_AT_FIRST = 1 << 16;
    private static final double NS_PER_S = 1e9;

    private WholeBody() {}

    /**
     * Reads a body.
     *
     * @param context the exchange
     * @param most bytes that it may have
     * @return its bytes
     * @throws Denial when it breaks off, stops coming, comes too slowly or has more bytes
     */
    static byte[] of(Context context, long most) {
        try {
            return read(context.req().getInputStream(), (int) announced(context, MOST_AT_FIRST), most);
        } catch (IOException | HttpException.RuntimeException unread) {
            throw denial(unread);
        }
    }

    /** How many bytes a body says it has; as many as it may have where it does not say. */
    static long announced(Context context, long most) {
        long length = context.req().getContentLengthLong();
        return length < 0 ? most : Math.min(length, most);
    }

    private static byte[] read(InputStream in, int announced, long most) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream(Math.max(32, announced));
        byte[] piece = new byte[PIECE];
        long start = System.nanoTime();
        int length = in.read(piece);
        while (length >= 0) {
            body.write(piece, 0, length);
            if (body.size() > most) {
                throw new Denial(Problems.Kind.TOO_LARGE, "a body may have " + most + " bytes");
            }
            if (body.size() < least(System.nanoTime() - start)) {
                throw new Denial(
                        Problems.Kind.TIMEOUT, "the body came at less than " + LEAST_BYTES_PER_S + " bytes a second");
            }
            length = in.read(piece);
        }
        return body.toByteArray();
    }

    private static double least(long sinceNs) {
        return (sinceNs - PATIENCE.toNanos()) / NS_PER_S * LEAST_BYTES_PER_S;
    }

    private static RuntimeException denial(Exception unread) {
        if (unread instanceof HttpException refused && refused.getCode() == Problems.Kind.TOO_LARGE.status()) {
            return new Denial(Problems.Kind.TOO_LARGE, null);
        }
        if (behind(unread, TimeoutException.class)) {
            return new Denial(Problems.Kind.TIMEOUT, "the body stopped coming before its end");
        }
        if (behind(unread, EofException.class) || behind(unread, HttpException.class)) {
            return new Denial(
                    Problems.Kind.MALFORMED_BODY,
                    "the body broke off: it is shorter than it says, or its chunks are wrong");
        }
        return new IllegalStateException("a body could not be read", unread);
    }

    private static boolean behind(Throwable failure, Class<?> reason) {
        return reason.isInstance(failure) || (failure.getCause() != null && behind(failure.getCause(), reason));
    }
}
