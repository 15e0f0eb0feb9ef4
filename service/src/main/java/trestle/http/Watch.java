package trestle.http;

import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Stands before everything else: gives each request its id, passes its trace on, and counts what is under way. */
final class Watch extends Handler.Wrapper {
    static final String ID_HEADER = "X-Request-Id";

    private final Metrics metrics;

    Watch(Metrics metrics) {
        this.metrics = metrics;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        Exchange exchange = Exchange.begin(request);
        response.getHeaders().put(ID_HEADER, exchange.id());
        // No browser is to take an answer for something else than it says it is.
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        exchange.trace()
                .ifPresent(trace -> response.getHeaders().put(TraceParent.HEADER, trace.passedOn(exchange.id())));
        metrics.begun();
        Request.addCompletionListener(request, failure -> metrics.ended());
        return super.handle(request, response, callback);
    }
}
