package trestle.batch;

import java.io.IOException;
import java.util.function.Supplier;
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
     * Size of the request, about.
     *
     * @return bytes
     */
    int size();

    /**
     * The request as it was sent, to be bound later, and on another thread.
     *
     * @param model its generated class
     * @return gives a request that keeps the contract, or throws a {@link Refusal} when it does not fit
     */
    <Q> Supplier<Q> taken(Class<Q> model);
}
