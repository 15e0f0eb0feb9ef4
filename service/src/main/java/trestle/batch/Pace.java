package trestle.batch;

import java.time.Duration;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;

/**
 * Works on many things, some at a time on all cores: so many that they take about a tenth of a second, which keeps the
 * cores busy, the answers coming, and what waits to be sent small. For one thread; what it works on must be pure.
 */
final class Pace {
    private static final int FEWEST = 4;
    private static final int MOST = 512;
    private static final long WANTED_NS = Duration.ofMillis(100).toNanos();

    private final LongSupplier clockNs;
    private int atOnce = FEWEST;

    /**
     * Begins slowly.
     *
     * @param clockNs a clock that only goes forward, ns
     */
    Pace(LongSupplier clockNs) {
        this.clockNs = clockNs;
    }

    /** How many to take next, at most. */
    int atOnce() {
        return atOnce;
    }

    /**
     * Works on some things side by side.
     *
     * @param count how many
     * @param work on the thing of a number
     * @return the results in their order
     */
    <T> List<T> paced(int count, IntFunction<T> work) {
        long begunNs = clockNs.getAsLong();
        List<T> results = count == 1
                ? List.of(work.apply(0))
                : IntStream.range(0, count).parallel().mapToObj(work).toList();
        long tookNs = clockNs.getAsLong() - begunNs;
        if (tookNs > WANTED_NS) {
            atOnce = Math.max(FEWEST, atOnce / 2);
        } else if (count == atOnce && tookNs < WANTED_NS / 2) {
            atOnce = Math.min(MOST, 2 * atOnce);
        }
        return results;
    }
}
