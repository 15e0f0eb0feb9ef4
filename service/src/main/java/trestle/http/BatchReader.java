package trestle.http;

import java.io.IOException;

/** The requests of a batch, one after the other. */
interface BatchReader {
    /**
     * Moves on to the next request; false when there is none.
     *
     * @throws Refusal when the batch cannot be read any further
     */
    boolean next() throws IOException;

    /** The line at which the request begins, from 1. */
    long line();

    /** Whether another request may be had without waiting for the client. */
    boolean pending() throws IOException;

    /**
     * The request.
     *
     * @throws Refusal when it does not fit the contract
     */
    <Q> Q request(Class<Q> model);
}
