package trestle.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import trestle.batch.BatchLimits;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.ReferenceTable;
import trestle.page.Documents;
import trestle.page.Pages;

/** Every route of the service, drawn from the catalogue. */
final class Routes {
    private final WarmUp warmUp = new WarmUp();
    private final Batches batches;
    private final Metrics metrics;
    private final Bodies bodies;

    /** Begins to answer an example, beside the start of the server. */
    void warmUp() {
        warmUp.begin();
    }

    Routes(Settings settings, Metrics metrics) {
        this.metrics = metrics;
        batches = new Batches(limits(settings), metrics);
        Room room = Room.ofThisProcess();
        bodies = new Bodies(settings.maxBodyBytes(), room);
        metrics.gauge(
                "trestle_request_memory_taken_ratio",
                "Share of the memory for requests that is taken, 0 to 1.",
                room::taken);
    }

    private static BatchLimits limits(Settings settings) {
        return BatchLimits.beside(
                settings.maxBatchBytes(),
                settings.maxBodyBytes(),
                Duration.ofSeconds(settings.maxBatchSeconds()),
                settings.maxConcurrentRequests());
    }

    void register(RoutesConfig routes) {
        Doors doors = new Doors(routes);
        new Pages(sentence -> new Denial(Problems.Kind.NOT_FOUND, sentence)).register(doors::reading);
        Catalogue.calculations().forEach(calculation -> calculation(doors, calculation));
        Catalogue.tables().forEach(table -> table(doors, table));
        doors.reading("/v1", context -> json(context, Documents.onBoard().index()));
        doors.reading(
                "/openapi.json", context -> json(context, Documents.onBoard().json()));
        doors.reading(
                "/openapi.yaml",
                context -> context.contentType("application/yaml")
                        .result(Documents.onBoard().yaml()));
        doors.reading(
                "/metrics",
                context -> context.header("Cache-Control", "no-store")
                        .contentType(Metrics.MEDIA_TYPE)
                        .result(metrics.text()));
        doors.reading("/health/live", context -> json(context, status("live")));
        doors.reading("/health/ready", this::ready);
        Failures.register(routes);
    }

    private <Q, R, W, A> void calculation(Doors doors, Calculation<Q, R, W, A> calculation) {
        CalculationRoute<Q, R, W, A> route = new CalculationRoute<>(calculation, batches, bodies);
        String path = "/v1/" + calculation.name();
        doors.answering(path, InlineError.around(route::get), InlineError.around(route::post));
        doors.reading(path + "/example", context -> json(context, example(calculation)));
    }

    private static byte[] example(Calculation<?, ?, ?, ?> calculation) {
        return Documents.onBoard().example(calculation.name()).orElseThrow();
    }

    private static void table(Doors doors, ReferenceTable table) {
        doors.reading(
                "/v1/reference/" + table.name(),
                context -> json(context, Json.bytes(new Table(table.name(), table.summary(), table.rows()))));
    }

    /** A reference table as it is sent, its fields in this order. */
    private record Table(String name, String summary, List<?> rows) {}

    private void ready(Context context) {
        if (!warmUp.done()) {
            throw new Denial(Problems.Kind.BUSY, "the service is warming up");
        }
        json(context, status("ready"));
    }

    private static byte[] status(String word) {
        return Json.bytes(Map.of("status", word));
    }

    private static void json(Context context, byte[] body) {
        context.contentType(MediaTypes.JSON).result(body);
    }
}
