package trestle.endpoint;

import trestle.figure.Theme;

/**
 * A calculation whose answer has a picture.
 *
 * @param <Q> generated request model
 */
public interface Drawn<Q> {
    /**
     * Draws the answer to a request that fits the contract.
     *
     * @param request validated against its constraints
     * @param theme colours
     * @return an SVG document
     * @throws ImpossibleRequest when the request contradicts itself
     */
    String figure(Q request, Theme theme);
}
