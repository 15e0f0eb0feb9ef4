package trestle.batch;

import java.time.Duration;
import java.util.function.LongSupplier;

/** Until when work may go on that is paid out piece by piece. */
public final class Deadline {
    private final Duration time;
    private final LongSupplier clockNs;
    private final long begunNs;

    /**
     * Begins to count.
     *
     * @param time how long the work may take
     * @param clockNs a clock that only goes forward, ns
     */
    Deadline(Duration time, LongSupplier clockNs) {
        this.time = time;
        this.clockNs = clockNs;
        begunNs = clockNs.getAsLong();
    }

    /**
     * Begins to count now.
     *
     * @param time how long the work may take
     * @return the deadline
     */
    public static Deadline after(Duration time) {
        return new Deadline(time, System::nanoTime);
    }

    /**
     * Whether the time is up.
     *
     * @return whether more has gone by than the work may take
     */
    public boolean isPast() {
        return clockNs.getAsLong() - begunNs > time.toNanos();
    }

    /**
     * How long the work may take.
     *
     * @return the whole of it, whatever has gone by
     */
    public Duration time() {
        return time;
    }
}
