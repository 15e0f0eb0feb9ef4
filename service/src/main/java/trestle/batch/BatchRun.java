package trestle.batch;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/**
 * One pass over a batch.
 *
 * @param <Q> generated request model
 */
public final class BatchRun<Q> {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    private final String name;
    private final Class<Q> model;
    private final Function<Q, Row> answering;

    /**
     * Prepares a pass.
     *
     * @param name of the calculation, for the log
     * @param model the generated class of its requests
     * @param answering answers a request, at once or when its row is written
     */
    public BatchRun(String name, Class<Q> model, Function<Q, Row> answering) {
        this.name = name;
        this.model = model;
        this.answering = answering;
    }

    /**
     * Answers request after request until there is none, the time is up or the client is gone.
     *
     * @param reader where the requests come from
     * @param rows where the answers go, each in the place of its request
     * @param deadline after which no further request is begun
     * @throws IOException when the client is gone
     */
    public void answer(BatchReader reader, RowStream rows, Deadline deadline) throws IOException {
        while (next(reader, rows)) {
            answerOne(reader, rows);
            if (deadline.isPast()) {
                rows.refusal(reader.line() + 1, timeIsUp(deadline));
                break;
            }
            if (reader.pending()) {
                rows.sendIfDue();
            } else {
                rows.send();
            }
        }
        rows.send();
    }

    /** Moves on; when the batch cannot be read any further that is the last thing said. */
    private static boolean next(BatchReader reader, RowStream rows) throws IOException {
        try {
            return reader.next();
        } catch (Refusal unreadable) {
            rows.refusal(reader.line() + 1, unreadable);
            return false;
        }
    }

    private void answerOne(BatchReader reader, RowStream rows) throws IOException {
        Optional<Refusal> refusal = tryOne(reader, rows);
        if (refusal.isPresent()) {
            rows.refusal(reader.line(), refusal.get());
        }
    }

    private Optional<Refusal> tryOne(BatchReader reader, RowStream rows) throws IOException {
        try {
            rows.row(answering.apply(reader.request(model)));
            return Optional.empty();
        } catch (RuntimeException failure) {
            Optional<Refusal> refusal = Refusal.behind(failure);
            if (refusal.isEmpty()) {
                LOG.error("failed on a line of a batch for {}", name, failure);
            }
            return refusal.or(() -> Optional.of(new Refusal(Reason.FAILED, (String) null)));
        }
    }

    private static Refusal timeIsUp(Deadline deadline) {
        return new Refusal(
                Reason.TOO_LATE, "a batch may take " + deadline.time().toSeconds() + " s: send the rest as another");
    }
}
