package trestle.batch;

import java.io.IOException;
import trestle.binding.Refusal;

/** The requests of a batch, one after the other. */
public interface BatchReader {
    /**
     * Moves on to the next request; false when there is none.
     *
     * @return whether there is one
     * @throws IOException when the client is gone
     * @throws Refusal when the batch cannot be read any further
     */
    boolean next() throws IOException;

    /**
     * Where the request begins.
     *
     * @return the line, from 1
     */
    long line();

    /**
     * Whether another request may be had without waiting for the client.
     *
     * @return whether there is more at hand
     * @throws IOException when the client is gone
     */
    boolean pending() throws IOException;

    /**
     * The request.
     *
     * @param model its generated class
     * @return a request that keeps the contract
     * @throws Refusal when it does not fit the contract
     */
    <Q> Q request(Class<Q> model);
}
