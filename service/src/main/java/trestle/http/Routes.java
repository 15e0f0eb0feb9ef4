package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trestle.endpoint.Calculation;
import trestle.endpoint.Catalogue;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.ReferenceTable;
import trestle.numeric.ImpossibleValue;

/** Every route of the service, drawn from the catalogue. */
final class Routes {
    private static final Logger LOG = LoggerFactory.getLogger("trestle.service");
    private static final String JSON = "application/json";

    private final Documents documents = new Documents();
    private final WarmUp warmUp = new WarmUp(documents);

    /** Begins to answer the examples; once the server listens, so that it does not start later. */
    void warmUp() {
        warmUp.begin();
    }

    void register(RoutesConfig routes) {
        new Pages(documents).register(routes::get);
        for (Calculation<?, ?> calculation : Catalogue.calculations()) {
            String path = "/v1/" + calculation.name();
            routes.post(path, context -> answer(context, calculation));
            routes.get(
                    path + "/example",
                    context -> json(context, documents.example(calculation.name()).orElseThrow()));
        }
        for (ReferenceTable table : Catalogue.tables()) {
            byte[] rows =
                    Json.bytes(
                            Map.of(
                                    "name",
                                    table.name(),
                                    "summary",
                                    table.summary(),
                                    "rows",
                                    table.rows()));
            routes.get("/v1/reference/" + table.name(), context -> json(context, rows));
        }
        routes.get("/v1", context -> json(context, documents.index()));
        routes.get("/openapi.json", context -> json(context, documents.json()));
        routes.get(
                "/openapi.yaml",
                context -> context.contentType("application/yaml").result(documents.yaml()));
        routes.get("/health/live", context -> json(context, Json.bytes(Map.of("status", "live"))));
        routes.get("/health/ready", this::ready);
        problems(routes);
    }

    private static <Q, A> void answer(Context context, Calculation<Q, A> calculation) {
        MediaTypes.requireJsonBody(context);
        MediaTypes.requireJsonAccepted(context);
        Q request = Binder.bind(context.bodyAsBytes(), calculation.requestType());
        json(context, Json.bytes(calculation.answer(request)));
    }

    private void ready(Context context) {
        if (!warmUp.done()) {
            throw new Refusal(Problems.Kind.BUSY, "the service is warming up");
        }
        json(context, Json.bytes(Map.of("status", "ready")));
    }

    private static void json(Context context, byte[] body) {
        context.contentType(JSON).result(body);
    }

    private static void problems(RoutesConfig routes) {
        routes.exception(
                Refusal.class,
                (refusal, context) ->
                        Problems.write(
                                context, refusal.kind(), refusal.getMessage(), refusal.faults()));
        routes.exception(
                ImpossibleRequest.class,
                (impossible, context) ->
                        Problems.write(
                                context,
                                Problems.Kind.IMPOSSIBLE_REQUEST,
                                null,
                                impossible.faults()));
        // A record refused a value that the contract lets through: the caller still learns which.
        routes.exception(
                ImpossibleValue.class,
                (impossible, context) ->
                        Problems.write(
                                context,
                                Problems.Kind.IMPOSSIBLE_REQUEST,
                                impossible.getMessage(),
                                List.of()));
        routes.exception(HttpResponseException.class, Routes::frameworkProblem);
        routes.exception(Exception.class, Routes::failure);
    }

    private static void frameworkProblem(HttpResponseException refused, Context context) {
        Problems.Kind kind = Problems.Kind.of(refused.getStatus());
        String allowed = refused.getDetails().get("availableMethods");
        if (kind == Problems.Kind.METHOD_NOT_ALLOWED && allowed != null) {
            context.header("Allow", allowed);
        }
        Problems.write(context, kind, null, List.of());
    }

    private static void failure(Exception failure, Context context) {
        LOG.error("failed on {} {}", context.method(), context.path(), failure);
        Problems.write(context, Problems.Kind.INTERNAL, null, List.of());
    }
}
