package trestle.endpoint;

import java.util.Optional;
import trestle.figure.Theme;

/**
 * A calculation whose answer holds the answers of others, each of which has a picture.
 *
 * @param <Q> generated request model
 */
public interface DrawnInParts<Q> {
    /**
     * Whether an answer may have a picture at a place.
     *
     * @param pointer JSON Pointer into the answer
     * @return whether to ask for it
     */
    boolean draws(String pointer);

    /**
     * Draws one part of the answer to a request that fits the contract.
     *
     * @param request validated against its constraints
     * @param pointer JSON Pointer to the part in the answer
     * @param theme colours
     * @return an SVG document; empty where this answer lacks the part
     * @throws ImpossibleRequest when the request contradicts itself
     */
    Optional<String> figure(Q request, String pointer, Theme theme);
}
