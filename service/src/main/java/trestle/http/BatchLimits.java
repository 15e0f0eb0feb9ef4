package trestle.http;

import java.time.Duration;

/**
 * How much work one batch may be.
 *
 * @param bytes greatest size of the body
 * @param requestBytes greatest size of one request in it: as much as a body of its own may have
 * @param time how long it may take in all
 * @param atOnce how many batches may run side by side
 */
record BatchLimits(long bytes, int requestBytes, Duration time, int atOnce) {
    /** Of the places for requests, batches may take this part: they hold theirs for long. */
    private static final int PART_OF_PLACES = 8;

    static BatchLimits of(Settings settings) {
        return new BatchLimits(
                settings.maxBatchBytes(),
                (int) Math.min(settings.maxBodyBytes(), Integer.MAX_VALUE),
                Duration.ofSeconds(settings.maxBatchSeconds()),
                Math.max(1, settings.maxConcurrentRequests() / PART_OF_PLACES));
    }
}
