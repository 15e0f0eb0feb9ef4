package trestle.endpoint;

import java.util.Optional;
import trestle.estimate.Depth;

/**
 * How a request that leaves things open is answered.
 *
 * @param estimates whether what is left out may be estimated
 * @param bands how thoroughly to seek how sure the figures are
 */
public record Certainty(boolean estimates, Bands bands) {
    /** Estimates, and bands from a fitted sample. */
    public static final Certainty FULL = new Certainty(true, Bands.FULL);

    /** Estimates, and nothing sampled. */
    public static final Certainty ESTIMATED = new Certainty(true, Bands.FALSE);

    /** Nothing is guessed and nothing sampled. */
    public static final Certainty GIVEN_ONLY = new Certainty(false, Bands.FALSE);

    /** How thoroughly bands are wanted, as callers say it. */
    public enum Bands {
        /** From a fitted sample. */
        FULL(Optional.of(Depth.FULL)),
        /** Each unknown alone. */
        QUICK(Optional.of(Depth.QUICK)),
        /** None. */
        FALSE(Optional.empty());

        private final Optional<Depth> depth;

        Bands(Optional<Depth> depth) {
            this.depth = depth;
        }

        Optional<Depth> depth() {
            return depth;
        }
    }
}
