package trestle.endpoint;

import java.util.Optional;
import trestle.estimate.Depth;

/**
 * How a request that leaves things open is answered.
 *
 * @param estimates whether what is left out may be estimated
 * @param bands how thoroughly to seek how sure the figures are; empty for not at all
 */
public record Certainty(boolean estimates, Optional<Depth> bands) {
    /** Estimates, and bands from a fitted sample. */
    public static final Certainty FULL = new Certainty(true, Optional.of(Depth.FULL));

    /** Nothing is guessed and nothing sampled. */
    public static final Certainty GIVEN_ONLY = new Certainty(false, Optional.empty());
}
