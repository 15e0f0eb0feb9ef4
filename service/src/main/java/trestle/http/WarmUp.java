package trestle.http;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.endpoint.Calculation;
import trestle.endpoint.Catalogue;

/**
 * Answers each calculation's own example once while the server starts, so that the first caller
 * does not wait for classes to load. The service says that it is ready when this is done.
 */
final class WarmUp {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    private final Documents documents;
    private volatile boolean done;

    WarmUp(Documents documents) {
        this.documents = documents;
    }

    void begin() {
        Thread thread = new Thread(this::run, "warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    boolean done() {
        return done;
    }

    private void run() {
        try {
            Catalogue.calculations().forEach(this::answer);
        } catch (RuntimeException broken) {
            LOG.error("an example of the contract could not be answered", broken);
        }
        done = true;
    }

    private <Q, A> void answer(Calculation<Q, A> calculation) {
        byte[] example = documents.example(calculation.name()).orElseThrow();
        Json.bytes(calculation.answer(Binder.bind(example, calculation.requestType())));
    }
}
