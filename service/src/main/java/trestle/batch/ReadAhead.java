package trestle.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.Arrays;
import java.util.concurrent.TimeoutException;
import trestle.binding.Reason;
import trestle.binding.Refusal;

/**
 * Takes in a body in the background, up to a bound. Many clients send all of a body before they
 * read any of the answer; a service that stopped reading while such a client does not read would
 * wait for it forever, and the client for the service. A batch that fits into the bound is answered
 * whatever the client does first.
 */
public final class ReadAhead extends InputStream {
    /** The longest batch that may be sent whole before any of the answer is read. */
    static final int MOST = 4 << 20;

    private static final int FIRST = 1 << 16;
    private static final int PIECE = 1 << 14;

    private final InputStream body;
    private final long mostInAll;
    private final Thread taker;

    private byte[] ring = new byte[FIRST];
    private int start;
    private int filled;
    private boolean ended;
    private boolean stopped;
    private IOException failure;
    private Refusal refusal;

    /**
     * Begins to read.
     *
     * @param body what is read
     * @param mostInAll greatest size of the body, bytes
     */
    public ReadAhead(InputStream body, long mostInAll) {
        this.body = body;
        this.mostInAll = mostInAll;
        taker = new Thread(this::take, "batch-body");
        taker.setDaemon(true);
        taker.start();
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    /**
     * Reads what is there, waiting for at least a byte.
     *
     * @throws Refusal when the body is too large or comes too slowly
     */
    @Override
    public synchronized int read(byte[] target, int offset, int length) throws IOException {
        while (filled == 0 && !ended) {
            await();
        }
        if (filled == 0) {
            if (refusal != null) {
                throw refusal;
            }
            if (failure != null) {
                throw failure;
            }
            return -1;
        }
        int count = Math.min(Math.min(length, filled), ring.length - start);
        System.arraycopy(ring, start, target, offset, count);
        start = (start + count) % ring.length;
        filled -= count;
        notifyAll();
        return count;
    }

    @Override
    public synchronized int available() {
        return filled;
    }

    /** Stops reading and waits until the body is let go, for the server will use it again. */
    @Override
    public void close() {
        synchronized (this) {
            stopped = true;
            notifyAll();
        }
        try {
            taker.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void take() {
        byte[] piece = new byte[PIECE];
        long total = 0;
        try {
            int count = body.read(piece);
            while (count >= 0 && put(piece, count)) {
                total += count;
                if (total > mostInAll) {
                    end(null, tooLarge());
                    return;
                }
                count = body.read(piece);
            }
            end(null, null);
        } catch (IOException broken) {
            boolean late = broken.getCause() instanceof TimeoutException;
            end(broken, late ? tooSlow() : brokenOff());
        }
    }

    private synchronized boolean put(byte[] piece, int count) throws IOException {
        while (!stopped && filled + count > ring.length) {
            if (ring.length < MOST) {
                grow();
            } else {
                await();
            }
        }
        int end = (start + filled) % ring.length;
        int first = Math.min(count, ring.length - end);
        System.arraycopy(piece, 0, ring, end, first);
        System.arraycopy(piece, first, ring, 0, count - first);
        filled += count;
        notifyAll();
        return !stopped;
    }

    private void grow() {
        byte[] larger = new byte[ring.length * 2];
        byte[] turned = Arrays.copyOfRange(ring, start, start + ring.length);
        System.arraycopy(ring, 0, turned, ring.length - start, start);
        System.arraycopy(turned, 0, larger, 0, filled);
        ring = larger;
        start = 0;
    }

    private synchronized void end(IOException broken, Refusal refused) {
        failure = broken;
        refusal = refused;
        ended = true;
        notifyAll();
    }

    private void await() throws IOException {
        try {
            wait();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException();
        }
    }

    private Refusal tooLarge() {
        return new Refusal(Reason.TOO_LARGE, "a batch may have " + mostInAll + " bytes: send several");
    }

    private static Refusal brokenOff() {
        return new Refusal(
                Reason.UNREADABLE, "the batch broke off here: it is shorter than it says, or its chunks are wrong");
    }

    private static Refusal tooSlow() {
        return new Refusal(Reason.TOO_LATE, "the rest of the batch did not come in time");
    }
}
