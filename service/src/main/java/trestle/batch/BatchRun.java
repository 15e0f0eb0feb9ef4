package trestle.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
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

    /** Requests of more than this in all are not taken at once, so that memory stays bounded. */
    private static final long MOST_BYTES = 256 * 1024;

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
     * Answers requests, some at a time on all cores, until there is none, the time is up or the client is gone.
     *
     * @param reader where the requests come from
     * @param rows where the answers go, each in the place of its request
     * @param deadline after which no further request is begun
     * @throws IOException when the client is gone
     */
    public void answer(BatchReader reader, RowStream rows, Deadline deadline) throws IOException {
        Pace pace = new Pace(System::nanoTime);
        boolean more = true;
        while (more) {
            List<Taken<Q>> taken = new ArrayList<>();
            Optional<Refusal> unreadable = take(reader, pace, taken);
            more = !taken.isEmpty() && unreadable.isEmpty();
            for (byte[] row : pace.paced(taken.size(), i -> row(taken.get(i), rows.writer()))) {
                rows.add(row);
            }
            if (unreadable.isPresent()) {
                rows.refusal(reader.line() + 1, unreadable.get());
            } else if (more && deadline.isPast()) {
                rows.refusal(reader.line() + 1, timeIsUp(deadline));
                more = false;
            }
            if (reader.pending()) {
                rows.sendIfDue();
            } else {
                rows.send();
            }
        }
        rows.send();
    }

    /** A request as it was sent, and the line where it begins. */
    private record Taken<Q>(Supplier<Q> request, long line) {}

    /**
     * Takes what is at hand, and waits for the first of it; when the batch cannot be read any further, says why.
     */
    private Optional<Refusal> take(BatchReader reader, Pace pace, List<Taken<Q>> taken) throws IOException {
        long size = 0;
        try {
            while (taken.isEmpty() || (taken.size() < pace.atOnce() && size < MOST_BYTES && reader.pending())) {
                if (!reader.next()) {
                    break;
                }
                taken.add(new Taken<>(reader.taken(model), reader.line()));
                size += reader.size();
            }
            return Optional.empty();
        } catch (Refusal unreadable) {
            return Optional.of(unreadable);
        }
    }

    /** Whatever becomes of a request, it has a row. */
    private byte[] row(Taken<Q> taken, RowWriter writer) {
        try {
            return writer.row(answering.apply(taken.request().get()));
        } catch (RuntimeException failure) {
            Optional<Refusal> refusal = Refusal.behind(failure);
            if (refusal.isEmpty()) {
                LOG.error("failed on a line of a batch for {}", name, failure);
            }
            return writer.refusal(taken.line(), refusal.orElseGet(() -> new Refusal(Reason.FAILED, (String) null)));
        }
    }

    private static Refusal timeIsUp(Deadline deadline) {
        return new Refusal(
                Reason.TOO_LATE, "a batch may take " + deadline.time().toSeconds() + " s: send the rest as another");
    }
}
