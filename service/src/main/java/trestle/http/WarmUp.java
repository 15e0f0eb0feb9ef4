package trestle.http;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.binding.Binder;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.page.Documents;

/**
 * Answers the first calculation's own example while the server starts, beside it, so that the first
 * caller does not wait for classes to load. The first is the review, which runs through all the
 * others. The service says that it is ready when this is done.
 */
final class WarmUp {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    private volatile boolean done;

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
            answer(Catalogue.calculations().get(0));
        } catch (RuntimeException broken) {
            LOG.error("an example of the contract could not be answered", broken);
        }
        done = true;
    }

    private <Q, R, W, A> void answer(Calculation<Q, R, W, A> calculation) {
        byte[] example = Documents.onBoard().example(calculation.name()).orElseThrow();
        Json.bytes(
                calculation.answer(calculation.done(Binder.bind(example, calculation.requestType()), Certainty.FULL)));
    }
}
