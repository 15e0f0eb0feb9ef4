package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What Prometheus gets to read, and that no caller can fill it. */
class MetricsHttpTest {
    private static final String LEAD = "{\"current_a\":9,\"length_mm\":600,\"supply_voltage_v\":22}";
    private static final Pattern SAMPLE =
            Pattern.compile("[a-z_]+(\\{[a-z_]+=\"[^\"\\n]*\"(,[a-z_]+=\"[^\"\\n]*\")*,?})? [-+0-9.eEInfNa]+");

    private static String scraped() {
        return LiveService.lawful()
                .get("/metrics")
                .then()
                .statusCode(200)
                .contentType("text/plain; version=0.0.4; charset=utf-8")
                .extract()
                .asString();
    }

    /** The value of a sample; 0 where it is not there yet. */
    private static double value(String text, String sample) {
        Matcher found =
                Pattern.compile("(?m)^" + Pattern.quote(sample) + " (\\S+)$").matcher(text);
        return found.find() ? Double.parseDouble(found.group(1)) : 0;
    }

    /** Counting is done when the answer is out, so that it may come a moment later. */
    private static void grows(String sample, double by, double before) throws InterruptedException {
        long until = System.nanoTime() + Duration.ofSeconds(10).toNanos();
        while (value(scraped(), sample) < before + by && System.nanoTime() < until) {
            Thread.sleep(20);
        }
        assertThat(value(scraped(), sample)).as(sample).isGreaterThanOrEqualTo(before + by);
    }

    @Test
    void everyLineIsOfTheTextFormat() {
        assertThat(scraped().lines().filter(line -> !line.startsWith("# HELP ") && !line.startsWith("# TYPE ")))
                .isNotEmpty()
                .allMatch(line -> SAMPLE.matcher(line).matches());
    }

    @Test
    void requestsAndTheirTimesAreCountedByRoute() throws InterruptedException {
        String counted = "trestle_requests_total{method=\"POST\",route=\"/v1/wire-sizing\",status=\"200\"}";
        String timed = "trestle_request_duration_seconds_count{route=\"/v1/wire-sizing\"}";
        String before = scraped();
        LiveService.lawful().body(LEAD).post("/v1/wire-sizing").then().statusCode(200);
        grows(counted, 1, value(before, counted));
        grows(timed, 1, value(before, timed));
    }

    @Test
    void rowsOfABatchAreCountedByWhatBecameOfThem() throws InterruptedException {
        String answered = "trestle_rows_total{calculation=\"wire-sizing\",outcome=\"answered\"}";
        String refused = "trestle_rows_total{calculation=\"wire-sizing\",outcome=\"refused\"}";
        String before = scraped();
        LiveService.unlawful()
                .contentType("application/x-ndjson")
                .body((LEAD + "\n{}\n" + LEAD + "\n").getBytes(StandardCharsets.UTF_8))
                .post("/v1/wire-sizing")
                .then()
                .statusCode(200);
        grows(answered, 2, value(before, answered));
        grows(refused, 1, value(before, refused));
    }

    /** A series for each thing that somebody makes up would fill the memory of whoever collects them. */
    @Test
    void whatACallerWritesIsNoLabel() throws InterruptedException {
        String none = "trestle_requests_total{method=\"GET\",route=\"none\",status=\"404\"}";
        double before = value(scraped(), none);
        for (int i = 0; i < 20; i++) {
            LiveService.unchecked().get("/v1/made-up-" + i).then().statusCode(404);
            LiveService.unchecked().get("/docs/made-up-" + i + ".css").then().statusCode(404);
            RawHttp.statusOf("MADEUP" + (char) ('A' + i) + " /v1 HTTP/1.1");
        }
        grows(none, 20, before);
        assertThat(scraped().toLowerCase(Locale.ROOT)).doesNotContain("made");
    }

    @Test
    void whatTheServerRefusesByItselfIsCountedToo() throws InterruptedException {
        String sample = "trestle_requests_total{method=\"other\",route=\"none\",status=\"505\"}";
        double before = value(scraped(), sample);
        RawHttp.statusOf("GET /v1 HTTP/3.0");
        grows(sample, 1, before);
    }

    @Test
    void whatIsUnderWayIsTheOneWhoAsksAndEndsWithIt() {
        for (String gauge : List.of("trestle_requests_waiting", "trestle_batches_under_way")) {
            assertThat(scraped()).containsPattern("(?m)^" + gauge + " 0\\.0$");
        }
        assertThat(value(scraped(), "trestle_requests_under_way")).isBetween(1.0, 5.0);
    }
}
