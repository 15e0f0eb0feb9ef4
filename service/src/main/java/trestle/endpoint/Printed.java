package trestle.endpoint;

/**
 * A calculation whose answer is worth a sheet of paper.
 *
 * @param <Q> generated request model
 */
public interface Printed<Q> {
    /**
     * Lays out the answer to a request that fits the contract, to print and file.
     *
     * @param request validated against its constraints
     * @return an HTML document of its own: nothing fetched, no script
     * @throws ImpossibleRequest when the request contradicts itself
     */
    String sheet(Q request);
}
