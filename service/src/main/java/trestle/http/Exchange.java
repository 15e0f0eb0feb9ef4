package trestle.http;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.Request;

/**
 * What is noted of one request while it is answered: by which name the log calls it, which trace it belongs to,
 * which route took it. Nothing that the caller wrote but the trace, which is of digits.
 */
final class Exchange {
    /** No route took the request. */
    static final String NO_ROUTE = "none";

    private static final String ATTRIBUTE = Exchange.class.getName();

    private final String id;
    private final Optional<TraceParent> trace;
    private volatile String route = NO_ROUTE;

    private Exchange(String id, Optional<TraceParent> trace) {
        this.id = id;
        this.trace = trace;
    }

    /** Begins to note what becomes of a request. */
    static Exchange begin(Request request) {
        Exchange exchange = new Exchange(newId(), TraceParent.of(lone(request.getHeaders(), TraceParent.HEADER)));
        request.setAttribute(ATTRIBUTE, exchange);
        return exchange;
    }

    /** What is noted of a request; empty for one that the server could not read. */
    static Optional<Exchange> of(Request request) {
        return Optional.ofNullable((Exchange) request.getAttribute(ATTRIBUTE));
    }

    /** The same by the framework's context. */
    static Optional<Exchange> of(Context context) {
        return Optional.ofNullable((Exchange) context.req().getAttribute(ATTRIBUTE));
    }

    /** The route that takes the request, as it is declared: a name of ours, of which there are few. */
    void takenBy(String declared) {
        route = declared;
    }

    String route() {
        return route;
    }

    /** 16 hexadecimal digits: an id of the request, and its step in a trace. */
    String id() {
        return id;
    }

    Optional<TraceParent> trace() {
        return trace;
    }

    /** An id is to tell requests apart, and keeps no secret. It is not 0, which a trace forbids. */
    private static String newId() {
        String digits = Long.toHexString(ThreadLocalRandom.current().nextLong() | 1);
        return "0".repeat(16 - digits.length()) + digits;
    }

    /** A header's value; null where there is none, and of one that comes twice, which says nothing. */
    static String lone(HttpFields headers, String name) {
        var values = headers.getValuesList(name);
        return values.size() == 1 ? values.get(0) : null;
    }
}
