package trestle.http;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import trestle.binding.Json;

/**
 * Errors that arise before a route is reached: a bad line, a body too large, no token, no free place. A page that may
 * read answers may read these, too.
 */
final class ServerProblems implements Request.Handler {
    private final Admission admission;

    ServerProblems(Admission admission) {
        this.admission = admission;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Problems.Kind kind = Problems.Kind.of(response.getStatus());
        response.setStatus(kind.status());
        HttpFields.Mutable headers = response.getHeaders();
        headers.put(HttpHeader.CONTENT_TYPE, Problems.MEDIA_TYPE);
        String origin = request.getHeaders().get(HttpHeader.ORIGIN);
        if (admission.admits(origin)) {
            headers.put(
                    HttpHeader.ACCESS_CONTROL_ALLOW_ORIGIN, admission.origins().contains("*") ? "*" : origin);
            headers.put(HttpHeader.VARY, "Origin");
        }
        switch (kind) {
            case BUSY -> headers.put(HttpHeader.RETRY_AFTER, Problems.RETRY_AFTER_S);
            case UNAUTHORIZED -> headers.put(HttpHeader.WWW_AUTHENTICATE, AccessToken.SCHEME);
            default -> {}
        }
        response.write(true, ByteBuffer.wrap(Json.bytes(Problem.of(kind).details())), callback);
        return true;
    }
}
