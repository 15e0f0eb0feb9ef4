package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.function.Consumer;

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
        at(path, get, handler -> {
            routes.get(path, handler);
            routes.head(path, handler);
        });
        options(path, SAFE);
    }

    /** A path that also takes a request in its body. */
    void answering(String path, Handler get, Handler post) {
        at(path, get, handler -> {
            routes.get(path, handler);
            routes.head(path, handler);
        });
        at(path, post, handler -> routes.post(path, handler));
        options(path, SAFE + ", POST");
    }

    /** Notes which route took a request, by its name and not by what the caller wrote. */
    private static void at(String path, Handler answering, Consumer<Handler> registering) {
        registering.accept(context -> {
            Exchange.of(context).ifPresent(exchange -> exchange.takenBy(path));
            answering.handle(context);
        });
    }

    private void options(String path, String allowed) {
        at(
                path,
                context -> none(context.status(204).header("Allow", allowed)),
                handler -> routes.options(path, handler));
    }

    /** Takes back the type that the framework notes for every answer. */
    private static void none(Context context) {
        context.res().setContentType(null);
    }
}
