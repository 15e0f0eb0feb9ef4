package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import trestle.endpoint.Calculation;
import trestle.endpoint.Catalogue;
import trestle.endpoint.ReferenceTable;

/** Every route of the service, drawn from the catalogue. */
final class Routes {
    private final Documents documents = new Documents();
    private final WarmUp warmUp = new WarmUp(documents);
    private final Batches batches;

    /** Begins to answer the examples; once the server listens, so that it does not start later. */
    void warmUp() {
        warmUp.begin();
    }

    Routes(Settings settings) {
        batches = new Batches(BatchLimits.of(settings));
    }

    void register(RoutesConfig routes) {
        Doors doors = new Doors(routes);
        Catalogue.calculations().forEach(calculation -> calculation(doors, calculation));
        Catalogue.tables().forEach(table -> table(doors, table));
        doors.reading("/v1", context -> json(context, documents.index()));
        doors.reading("/openapi.json", context -> json(context, documents.json()));
        doors.reading(
                "/openapi.yaml",
                context -> context.contentType("application/yaml").result(documents.yaml()));
        doors.reading("/health/live", context -> json(context, status("live")));
        doors.reading("/health/ready", this::ready);
        Failures.register(routes);
    }

    private <Q, A> void calculation(Doors doors, Calculation<Q, A> calculation) {
        CalculationRoute<Q, A> route = new CalculationRoute<>(calculation, batches);
        String path = "/v1/" + calculation.name();
        doors.answering(path, InlineError.around(route::get), InlineError.around(route::post));
        byte[] example = documents.example(calculation.name()).orElseThrow();
        doors.reading(path + "/example", context -> json(context, example));
    }

    private static void table(Doors doors, ReferenceTable table) {
        byte[] rows =
                Json.bytes(
                        Map.of(
                                "name", table.name(),
                                "summary", table.summary(),
                                "rows", table.rows()));
        doors.reading("/v1/reference/" + table.name(), context -> json(context, rows));
    }

    private void ready(Context context) {
        if (!warmUp.done()) {
            throw new Refusal(Problems.Kind.BUSY, "the service is warming up");
        }
        json(context, status("ready"));
    }

    private static byte[] status(String word) {
        return Json.bytes(Map.of("status", word));
    }

    private static void json(Context context, byte[] body) {
        context.contentType(Json.MEDIA_TYPE).result(body);
    }
}
