package trestle.http;

import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.spi.LoggingEventBuilder;

/**
 * Counts each request when its answer is out, and writes a line of it: id, trace, method, route, status, time. Never
 * an address, a query, a header or a body: they are the caller's. The server calls this for what it refuses by itself,
 * too.
 */
final class RequestLog implements org.eclipse.jetty.server.RequestLog {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.request");

    private static final double NS_PER_MS = 1e6;

    private final Metrics metrics;

    RequestLog(Metrics metrics) {
        this.metrics = metrics;
    }

    @Override
    public void log(Request request, Response response) {
        long tookNs = System.nanoTime() - request.getBeginNanoTime();
        String method = String.valueOf(request.getMethod());
        int status = response.getStatus();
        String route = Exchange.of(request).map(Exchange::route).orElse(Exchange.NO_ROUTE);
        metrics.answered(route, method, status, tookNs);
        if (LOG.isInfoEnabled()) {
            LoggingEventBuilder line = LOG.atInfo()
                    .addKeyValue("method", Metrics.known(method))
                    .addKeyValue("route", route)
                    .addKeyValue("status", status)
                    .addKeyValue("duration_ms", Math.round(tookNs / NS_PER_MS * 10) / 10.0);
            Exchange.of(request).ifPresent(exchange -> {
                line.addKeyValue("request_id", exchange.id());
                exchange.trace()
                        .ifPresent(trace -> line.addKeyValue("trace_id", trace.trace())
                                .addKeyValue(TraceParent.HEADER, trace.passedOn(exchange.id())));
            });
            line.log("answered");
        }
    }
}
