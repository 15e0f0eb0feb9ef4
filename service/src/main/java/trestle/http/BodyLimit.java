package trestle.http;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.SizeLimitHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Bounds the size of a body, but not of a batch, which is never held whole and has its own bound.
 */
final class BodyLimit extends SizeLimitHandler {
    BodyLimit(long bytes) {
        super(bytes, -1);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return MediaTypes.isBatch(request.getHeaders().get(HttpHeader.CONTENT_TYPE))
                ? getHandler().handle(request, response, callback)
                : super.handle(request, response, callback);
    }
}
