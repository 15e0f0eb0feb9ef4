package trestle.endpoint;

/**
 * One calculation of the catalogue: a pure function from a generated request to a generated answer.
 *
 * @param <Q> generated request model
 * @param <A> generated answer model
 */
public interface Calculation<Q, A> {
    /**
     * Name of the calculation: kebab-case, the last part of its path.
     *
     * @return the name
     */
    String name();

    /**
     * The generated model of its request.
     *
     * @return the class
     */
    Class<Q> requestType();

    /**
     * Answers a request that fits the contract.
     *
     * @param request validated against its constraints
     * @return the answer
     * @throws ImpossibleRequest when the request contradicts itself
     */
    A answer(Q request);
}
