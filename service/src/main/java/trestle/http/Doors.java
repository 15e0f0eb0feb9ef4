package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;

/**
 * Opens a path for the methods it takes. What can be got also answers HEAD and OPTIONS: one cell of
 * a spreadsheet sends all three.
 */
final class Doors {
    private static final String SAFE = "GET, HEAD, OPTIONS";

    private final RoutesConfig routes;

    Doors(RoutesConfig routes) {
        this.routes = routes;
    }

    /** A path to read from. The server leaves the body out where only the head is asked for. */
    void reading(String path, Handler get) {
        routes.get(path, get);
        routes.head(path, get);
        options(path, SAFE);
    }

    /** A path that also takes a request in its body. */
    void answering(String path, Handler get, Handler post) {
        routes.get(path, get);
        routes.head(path, get);
        routes.post(path, post);
        options(path, SAFE + ", POST");
    }

    private void options(String path, String allowed) {
        routes.options(path, context -> none(context.status(204).header("Allow", allowed)));
    }

    /** Takes back the type that the framework notes for every answer. */
    private static void none(Context context) {
        context.res().setContentType(null);
    }
}
