package trestle.batch;

import java.time.Duration;

/**
 * How much work one batch may be.
 *
 * @param bytes greatest size of the body
 * @param requestBytes greatest size of one request in it: as much as a body of its own may have
 * @param time how long it may take in all
 * @param atOnce how many batches may run side by side
 */
public record BatchLimits(long bytes, int requestBytes, Duration time, int atOnce) {
    /** Of the places for requests, batches may take this part: they hold theirs for long. */
    private static final int PART_OF_PLACES = 8;

    /**
     * The limits beside those of single requests.
     *
     * @param bytes greatest size of a batch
     * @param bodyBytes greatest size of the body of a single request
     * @param time how long a batch may take in all
     * @param places how many requests may run side by side
     * @return the limits
     */
    public static BatchLimits beside(long bytes, long bodyBytes, Duration time, int places) {
        return new BatchLimits(
                bytes, (int) Math.min(bodyBytes, Integer.MAX_VALUE), time, Math.max(1, places / PART_OF_PLACES));
    }
}
