package trestle.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Duration;
import java.util.function.LongSupplier;
import trestle.binding.Refusal;

/**
 * Sends rows while they are made. A row waits for others to be sent with it only as long as they
 * come quickly, so that a client sees how far the work is.
 */
public final class RowStream {
    /** A row waits no longer than this. */
    private static final long LONGEST_HOLD_NS = Duration.ofMillis(250).toNanos();

    private final RowWriter writer;
    private final OutputStream out;
    private final LongSupplier clockNs;
    private long sentNs;

    /**
     * Begins a stream.
     *
     * @param writer what makes bytes of rows
     * @param out where they go
     * @param clockNs a clock that only goes forward, ns
     * @throws IOException when nobody takes the bytes
     */
    RowStream(RowWriter writer, OutputStream out, LongSupplier clockNs) throws IOException {
        this.writer = writer;
        this.out = out;
        this.clockNs = clockNs;
        sentNs = clockNs.getAsLong();
        out.write(writer.head());
    }

    /**
     * Begins a stream now.
     *
     * @param writer what makes bytes of rows
     * @param out where they go
     * @return the stream
     * @throws IOException when nobody takes the bytes
     */
    public static RowStream to(RowWriter writer, OutputStream out) throws IOException {
        return new RowStream(writer, out, System::nanoTime);
    }

    /**
     * What makes bytes of rows.
     *
     * @return the writer
     */
    RowWriter writer() {
        return writer;
    }

    /**
     * Adds what its writer made.
     *
     * @param bytes of a row or a refusal
     * @throws IOException when nobody takes the bytes
     */
    void add(byte[] bytes) throws IOException {
        out.write(bytes);
    }

    /**
     * Adds a row; all of it or, if that fails, nothing.
     *
     * @param row the row
     * @throws IOException when nobody takes the bytes
     */
    public void row(Row row) throws IOException {
        add(writer.row(row));
    }

    /**
     * Adds why there is no row.
     *
     * @param line of the request, from 1
     * @param refusal what is wrong with it
     * @throws IOException when nobody takes the bytes
     */
    public void refusal(long line, Refusal refusal) throws IOException {
        add(writer.refusal(line, refusal));
    }

    /**
     * Sends what has been added, if it has waited for long.
     *
     * @throws IOException when nobody takes the bytes
     */
    public void sendIfDue() throws IOException {
        if (clockNs.getAsLong() - sentNs > LONGEST_HOLD_NS) {
            send();
        }
    }

    /**
     * Sends what has been added.
     *
     * @throws IOException when nobody takes the bytes
     */
    public void send() throws IOException {
        out.flush();
        sentNs = clockNs.getAsLong();
    }
}
