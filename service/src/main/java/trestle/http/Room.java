package trestle.http;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Room for requests in memory. Read, a request is many times as large as the bytes that it comes in; many large ones
 * at once would be more than the process has. Each takes room by its size before it is read, waits a moment for it,
 * and gives it back when it is answered.
 */
final class Room {
    /**
     * Bytes that a byte of a request may take. Measured on a 64-bit Java 17 with a heap below 32 GB: a list of items of two
     * short fields 10 for its tree and 5 for its model, a list of empty objects 29 for its tree; the rest is for faults,
     * for the answer and for what is not collected yet.
     */
    private static final int TIMES = 40;

    /** The rest is for the program, its caches, connections and batches. */
    private static final double SHARE_OF_HEAP = 0.4;

    private static final long LONGEST_WAIT_MS = 500;
    private static final int BYTES_PER_UNIT = 1024;

    private final int units;
    private final Semaphore free;

    Room(long heapBytes) {
        units = (int) Math.max(1, Math.min(Integer.MAX_VALUE, (long) (heapBytes * SHARE_OF_HEAP / BYTES_PER_UNIT)));
        free = new Semaphore(units);
    }

    /** The room of this process. */
    static Room ofThisProcess() {
        return new Room(Runtime.getRuntime().maxMemory());
    }

    /** Room that is taken until it is given back. */
    interface Taken {
        void giveBack();
    }

    /**
     * Takes room for a request; one that alone is more than there is takes all of it.
     *
     * @param requestBytes how many bytes it comes in
     * @return the room, to be given back
     * @throws Denial when others have it
     */
    Taken forRequest(long requestBytes) {
        int wanted = (int) Math.min(units, 1 + requestBytes * TIMES / BYTES_PER_UNIT);
        boolean had;
        try {
            had = free.tryAcquire(wanted, LONGEST_WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            had = false;
        }
        if (!had) {
            throw new Denial(Problems.Kind.BUSY, "the memory is taken by other large requests");
        }
        return () -> free.release(wanted);
    }

    /** How much of it is taken, from 0 to 1. */
    double taken() {
        return 1 - (double) free.availablePermits() / units;
    }
}
