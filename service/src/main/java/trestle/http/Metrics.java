package trestle.http;

import io.prometheus.metrics.config.EscapingScheme;
import io.prometheus.metrics.core.metrics.Counter;
import io.prometheus.metrics.core.metrics.GaugeWithCallback;
import io.prometheus.metrics.core.metrics.Histogram;
import io.prometheus.metrics.expositionformats.PrometheusTextFormatWriter;
import io.prometheus.metrics.model.registry.PrometheusRegistry;
import io.prometheus.metrics.model.snapshots.Unit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleSupplier;
import trestle.endpoint.Version;

/**
 * What the service counts, for Prometheus. A label takes values of ours alone: the routes as they are declared, the
 * methods that HTTP knows, statuses, names of calculations; nothing that a caller writes becomes one. Counting adds
 * to a few counters when the answer is out; all else is done when somebody asks.
 */
final class Metrics {
    /** The text format, version 0.0.4. */
    static final String MEDIA_TYPE = PrometheusTextFormatWriter.CONTENT_TYPE;

    /** From a cell of a spreadsheet to the longest batch, s. */
    private static final double[] BOUNDS_S = {
        0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 60, 600
    };

    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST", "OPTIONS", "PUT", "PATCH", "DELETE");
    private static final double NS_PER_S = 1e9;

    private final PrometheusRegistry registry = new PrometheusRegistry();
    private final PrometheusTextFormatWriter writer = PrometheusTextFormatWriter.create();
    private final AtomicInteger underWay = new AtomicInteger();

    private final Counter requests = Counter.builder()
            .name("trestle_requests_total")
            .help("Requests answered, by the route that took them (none: no route did).")
            .labelNames("route", "method", "status")
            .withoutExemplars()
            .register(registry);

    private final Histogram durations = Histogram.builder()
            .name("trestle_request_duration_seconds")
            .unit(Unit.SECONDS)
            .help("Time from the first byte of a request to the last of its answer; a batch is one request.")
            .labelNames("route")
            .classicOnly()
            .classicUpperBounds(BOUNDS_S)
            .withoutExemplars()
            .register(registry);

    private final Counter rows = Counter.builder()
            .name("trestle_rows_total")
            .help("Rows of batches and of studies that were sent, by calculation and by whether they were answered.")
            .labelNames("calculation", "outcome")
            .withoutExemplars()
            .register(registry);

    Metrics() {
        gauge("trestle_requests_under_way", "Requests that are being answered or wait for a place.", underWay::get);
        GaugeWithCallback.builder()
                .name("trestle_build_info")
                .help("1, with the version of the service.")
                .labelNames("version")
                .callback(value -> value.call(1, Version.current()))
                .register(registry);
        Machine.register(registry);
    }

    /** A number that is asked for when somebody asks for all. */
    void gauge(String name, String help, DoubleSupplier now) {
        GaugeWithCallback.builder()
                .name(name)
                .help(help)
                .callback(value -> value.call(now.getAsDouble()))
                .register(registry);
    }

    /** Notes that a request has come. */
    void begun() {
        underWay.incrementAndGet();
    }

    /** Notes that it is done with, whatever became of it. */
    void ended() {
        underWay.decrementAndGet();
    }

    /** Notes how a request was answered. */
    void answered(String route, String method, int status, long tookNs) {
        requests.labelValues(route, known(method), Integer.toString(status)).inc();
        durations.labelValues(route).observe(tookNs / NS_PER_S);
    }

    /** A method that HTTP knows by its name, any other as one. */
    static String known(String method) {
        return METHODS.contains(method) ? method : "other";
    }

    /** Notes a row of a batch or a study. */
    void row(String calculation, boolean answered) {
        rows.labelValues(calculation, answered ? "answered" : "refused").inc();
    }

    /** Everything that is counted, as Prometheus reads it. */
    byte[] text() {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        try {
            writer.write(text, registry.scrape(), EscapingScheme.UNDERSCORE_ESCAPING);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toByteArray();
    }
}
