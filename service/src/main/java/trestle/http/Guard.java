package trestle.http;

import java.util.Set;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Turns away, before anything of its body is read, who does not know the token, and who asks by a name that is not the
 * service's: a page can have its own name lead to this machine, and would then read what the service answers here.
 */
final class Guard extends Handler.Wrapper {
    /** Asked by what restarts the service, which knows nothing else of it. As it is written, with no way round. */
    private static final Set<String> OPEN = Set.of("/health/live", "/health/ready");

    private final Admission admission;
    private final HostNames names;

    Guard(Admission admission, HostNames names) {
        this.admission = admission;
        this.names = names;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (!OPEN.contains(request.getHttpURI().getPath())) {
            if (!names.include(request.getHttpURI().getHost())) {
                Response.writeError(request, response, callback, Problems.Kind.MISDIRECTED.status());
                return true;
            }
            if (!known(request)) {
                Response.writeError(request, response, callback, Problems.Kind.UNAUTHORIZED.status());
                return true;
            }
        }
        return super.handle(request, response, callback);
    }

    private boolean known(Request request) {
        return admission.token().isEmpty()
                || isPreflight(request)
                || admission
                        .token()
                        .get()
                        .isIn(Exchange.lone(request.getHeaders(), HttpHeader.AUTHORIZATION.asString()));
    }

    /** A browser asks whether a page may send a token before it lets the page send it; the answer is a few headers. */
    private static boolean isPreflight(Request request) {
        return HttpMethod.OPTIONS.is(request.getMethod())
                && request.getHeaders().contains(HttpHeader.ORIGIN)
                && request.getHeaders().contains("Access-Control-Request-Method");
    }
}
