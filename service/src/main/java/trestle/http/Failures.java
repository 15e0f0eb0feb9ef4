package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Turns what a route throws into a problem: the caller's fault, the framework's word, or our own.
 */
final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");

    private Failures() {}

    static void register(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, Failures::refusedByFramework);
        routes.exception(Exception.class, Failures::failed);
    }

    private static void refusedByFramework(HttpResponseException refused, Context context) {
        Problems.Kind kind = Problems.Kind.of(refused.getStatus());
        String allowed = refused.getDetails().get("availableMethods");
        if (kind == Problems.Kind.METHOD_NOT_ALLOWED && allowed != null) {
            context.header("Allow", allowed);
        }
        Problems.write(context, Problem.of(kind));
    }

    private static void failed(Exception failure, Context context) {
        if (failure instanceof RuntimeException thrown) {
            var problem = Problem.behind(thrown);
            if (problem.isPresent()) {
                Problems.write(context, problem.get());
                return;
            }
        }
        Exchange.of(context)
                .ifPresent(exchange -> LOG.atError()
                        .setCause(failure)
                        .addKeyValue("route", exchange.route())
                        .addKeyValue("request_id", exchange.id())
                        .log("a request failed"));
        Problems.write(context, Problem.of(Problems.Kind.INTERNAL));
    }
}
