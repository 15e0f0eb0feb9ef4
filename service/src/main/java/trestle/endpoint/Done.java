package trestle.endpoint;

import java.util.List;
import trestle.api.model.ApiAssumption;

/**
 * A request that was read once and worked once.
 *
 * @param request the generated request, for the names and places that stand in it
 * @param read what was read of it
 * @param work what was worked out
 * @param assumed the defaults that were noted while reading
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 */
public record Done<Q, R, W>(Q request, R read, W work, List<ApiAssumption> assumed) {
    /** Copies the list. */
    public Done {
        assumed = List.copyOf(assumed);
    }
}
