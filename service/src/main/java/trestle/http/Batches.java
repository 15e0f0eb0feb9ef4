package trestle.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.batch.BatchLimits;
import trestle.batch.BatchReader;
import trestle.batch.BatchRun;
import trestle.batch.Csv;
import trestle.batch.CsvReader;
import trestle.batch.CsvWriter;
import trestle.batch.Deadline;
import trestle.batch.LineReader;
import trestle.batch.NdjsonReader;
import trestle.batch.NdjsonWriter;
import trestle.batch.ReadAhead;
import trestle.batch.RowReader;
import trestle.batch.RowStream;
import trestle.batch.RowWriter;
import trestle.batch.TableRun;
import trestle.binding.AnswerShape;
import trestle.binding.FieldPath;
import trestle.endpoint.Calculation;
import trestle.endpoint.Table;
import trestle.finding.Caution;
import trestle.rendering.Answered;
import trestle.rendering.Options;

/**
 * Answers many requests in one body, in their order, while the body still comes in. A request that
 * is refused has its refusal in its place, and the rest go on. Memory is bounded whatever comes: by
 * the read-ahead, one request, one answer, and the server's buffers.
 */
final class Batches {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    /**
     * When its time is up a batch ends itself between two requests; this much later it is broken.
     */
    private static final Duration GRACE = Duration.ofSeconds(5);

    private final BatchLimits limits;
    private final Semaphore places;
    private final Metrics metrics;

    Batches(BatchLimits limits, Metrics metrics) {
        this.limits = limits;
        this.metrics = metrics;
        places = new Semaphore(limits.atOnce());
        metrics.gauge(
                "trestle_batches_under_way",
                "Batches and streams of rows that are being answered.",
                () -> limits.atOnce() - places.availablePermits());
    }

    /**
     * Answers a batch.
     *
     * @throws Denial when it may not begin
     * @throws trestle.binding.Refusal when it cannot be read at all
     */
    <Q, R, W, A> void answer(Context context, Calculation<Q, R, W, A> calculation, Options options) {
        String mediaType = mediaType(context, options);
        if (context.req().getContentLengthLong() > limits.bytes()) {
            throw new Denial(Problems.Kind.TOO_LARGE, "a batch may have " + limits.bytes() + " bytes");
        }
        if (!places.tryAcquire()) {
            throw new Denial(Problems.Kind.BUSY, limits.atOnce() + " batches are being answered already");
        }
        Cutoff cutoff = new Cutoff(context, limits.time().plus(GRACE));
        try (ReadAhead body = new ReadAhead(context.bodyInputStream(), limits.bytes())) {
            BatchReader reader = reader(context, body, calculation.requestType());
            context.contentType(mediaType);
            OutputStream out = context.res().getOutputStream();
            BatchRun<Q> run = new BatchRun<>(
                    calculation.name(),
                    calculation.requestType(),
                    request -> Answered.of(calculation, request, options));
            run.answer(
                    reader,
                    RowStream.to(counted(writer(mediaType, calculation, options), calculation), out),
                    Deadline.after(limits.time()));
        } catch (IOException gone) {
            LOG.info("a batch for {} ended early: {}", calculation.name(), gone.toString());
        } finally {
            cutoff.cancel();
            places.release();
        }
    }

    /**
     * Sends the rows of one answer, as CSV or as JSON lines, while they are made.
     *
     * @throws Denial when it may not begin
     */
    void send(Context context, Calculation<?, ?, ?, ?> calculation, Table table, Options options, String mediaType) {
        if (!places.tryAcquire()) {
            throw new Denial(Problems.Kind.BUSY, limits.atOnce() + " batches are being answered already");
        }
        Cutoff cutoff = new Cutoff(context, limits.time().plus(GRACE));
        try {
            context.contentType(mediaType);
            OutputStream out = context.res().getOutputStream();
            List<FieldPath> columns = table.columns().stream()
                    .map(name -> new FieldPath(List.of(name)))
                    .toList();
            RowWriter writer = isCsv(mediaType)
                    ? new CsvWriter(comments(options), columns, r -> InlineError.text(Problem.of(r)))
                    : new NdjsonWriter(List.of(), (line, r) -> Problem.of(r).details(line));
            TableRun.send(table, RowStream.to(counted(writer, calculation), out), Deadline.after(limits.time()));
        } catch (IOException gone) {
            LOG.info("a stream of rows ended early: {}", gone.toString());
        } finally {
            cutoff.cancel();
            places.release();
        }
    }

    private RowWriter counted(RowWriter writer, Calculation<?, ?, ?, ?> calculation) {
        return new CountedRows(writer, calculation.name(), metrics);
    }

    /** How rows are asked for; empty where the whole answer is. */
    static Optional<String> rowsAsked(Context context, Options options) {
        if (options.as().isPresent()) {
            return options.as().filter(form -> form == Options.Form.CSV).map(form -> Csv.MEDIA_TYPE);
        }
        String accept = Optional.ofNullable(context.header("Accept")).orElse("");
        if (accept.startsWith(MediaTypes.NDJSON)) {
            return Optional.of(MediaTypes.NDJSON);
        }
        return accept.startsWith(MediaTypes.CSV) ? Optional.of(Csv.MEDIA_TYPE) : Optional.empty();
    }

    private static RowWriter writer(String mediaType, Calculation<?, ?, ?, ?> calculation, Options options) {
        return isCsv(mediaType)
                ? new CsvWriter(comments(options), columns(calculation, options), r -> InlineError.text(Problem.of(r)))
                : new NdjsonWriter(options.picks(), (line, r) -> Problem.of(r).details(line));
    }

    /** The cautions of an answer are known only after the header: they stand in the answer as JSON. */
    private static List<String> comments(Options options) {
        return options.cautions()
                ? List.of(Caution.AID, "Each answer has cautions of its own: ask for it as JSON.")
                : List.of();
    }

    private BatchReader reader(Context context, InputStream body, Class<?> model) throws IOException {
        LineReader lines = new LineReader(body, limits.requestBytes());
        String type = MediaTypes.of(context);
        return isCsv(type)
                ? CsvReader.of(new RowReader(lines, MediaTypes.encoding(type)), model)
                : new NdjsonReader(lines);
    }

    private static List<FieldPath> columns(Calculation<?, ?, ?, ?> calculation, Options options) {
        return options.picks().isEmpty() ? AnswerShape.columns(calculation.answerType()) : options.picks();
    }

    /** What the caller asks for; without a wish the answers are written as the requests are. */
    private static String mediaType(Context context, Options options) {
        List<String> offered = isCsv(MediaTypes.of(context))
                ? List.of(Csv.MEDIA_TYPE, MediaTypes.NDJSON)
                : List.of(MediaTypes.NDJSON, Csv.MEDIA_TYPE);
        return options.as()
                .map(Batches::mediaType)
                .orElseGet(() -> Accept.best(context.header("Accept"), offered, t -> t))
                .orElseThrow(() -> new Denial(
                        Problems.Kind.NOT_ACCEPTABLE,
                        "the answers are offered as application/x-ndjson (as=json)" + " and text/csv (as=csv)"));
    }

    private static Optional<String> mediaType(Options.Form form) {
        return switch (form) {
            case JSON -> Optional.of(MediaTypes.NDJSON);
            case CSV -> Optional.of(Csv.MEDIA_TYPE);
            default -> Optional.empty();
        };
    }

    private static boolean isCsv(String mediaType) {
        return MediaTypes.bare(mediaType).equals(MediaTypes.CSV);
    }
}
