package trestle.endpoint;

/**
 * A request that was read once and worked once.
 *
 * @param request the generated request with its estimates, for the names and places that stand in it
 * @param read what was read of it
 * @param work what was worked out
 * @param assumed what the answer rests on beside the numbers given
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 */
public record Done<Q, R, W>(Q request, R read, W work, Premises assumed) {}
