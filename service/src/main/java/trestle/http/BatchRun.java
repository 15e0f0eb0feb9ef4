package trestle.http;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.endpoint.Calculation;

/**
 * One pass over a batch.
 *
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 * @param <A> generated answer model
 */
final class BatchRun<Q, R, W, A> {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    /** An answer waits no longer than this for others to be sent with it. */
    private static final long LONGEST_HOLD_NS = Duration.ofMillis(250).toNanos();

    private final Calculation<Q, R, W, A> calculation;
    private final Options options;
    private final BatchReader reader;
    private final BatchWriter writer;

    BatchRun(Calculation<Q, R, W, A> calculation, Options options, BatchReader reader, BatchWriter writer) {
        this.calculation = calculation;
        this.options = options;
        this.reader = reader;
        this.writer = writer;
    }

    /** Answers request after request until there is none, the time is up or the client is gone. */
    void within(Duration time) throws IOException {
        long begun = System.nanoTime();
        long sent = begun;
        while (next()) {
            answerOne();
            long now = System.nanoTime();
            if (now - begun > time.toNanos()) {
                writer.refusal(reader.line() + 1, timeIsUp(time));
                break;
            }
            if (now - sent > LONGEST_HOLD_NS || !reader.pending()) {
                writer.flush();
                sent = now;
            }
        }
        writer.flush();
    }

    /** Moves on; when the batch cannot be read any further that is the last thing said. */
    private boolean next() throws IOException {
        try {
            return reader.next();
        } catch (Refusal unreadable) {
            writer.refusal(reader.line() + 1, unreadable);
            return false;
        }
    }

    private void answerOne() throws IOException {
        Optional<Refusal> refusal = tryOne();
        if (refusal.isPresent()) {
            writer.refusal(reader.line(), refusal.get());
        }
    }

    private Optional<Refusal> tryOne() throws IOException {
        try {
            Q request = reader.request(calculation.requestType());
            writer.answer(Answered.of(calculation, request, options));
            return Optional.empty();
        } catch (RuntimeException failure) {
            Optional<Refusal> refusal = Refusal.behind(failure);
            if (refusal.isEmpty()) {
                LOG.error("failed on a line of a batch for {}", calculation.name(), failure);
            }
            return refusal.or(() -> Optional.of(new Refusal(Problems.Kind.INTERNAL, (String) null)));
        }
    }

    private static Refusal timeIsUp(Duration time) {
        return new Refusal(
                Problems.Kind.TIMEOUT, "a batch may take " + time.toSeconds() + " s: send the rest as another");
    }
}
