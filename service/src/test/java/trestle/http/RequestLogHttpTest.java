package trestle.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** The line that each request leaves. */
class RequestLogHttpTest {
    private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";
    private static final String CALLERS = "00-" + TRACE + "-00f067aa0ba902b7-01";

    /** The answer to what is asked, and the one line with its id. */
    private record Logged(Response answer, String line) {}

    private static Logged logged(Supplier<Response> asking) throws InterruptedException {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            Response answer = asking.get();
            String id = answer.header("X-Request-Id");
            assertThat(id).matches("[0-9a-f]{16}");
            long until = System.nanoTime() + Duration.ofSeconds(10).toNanos();
            List<String> lines = List.of();
            while (lines.isEmpty() && System.nanoTime() < until) {
                Thread.sleep(10);
                lines = said.toString(StandardCharsets.UTF_8)
                        .lines()
                        .filter(line -> line.contains("request_id=" + id))
                        .toList();
            }
            assertThat(lines).hasSize(1);
            return new Logged(answer, lines.get(0));
        } finally {
            System.setErr(before);
        }
    }

    @Test
    void aRequestLeavesOneLineWithItsIdRouteStatusAndTime() throws InterruptedException {
        Logged logged = logged(() -> LiveService.lawful().get("/v1/wire-sizing/example"));
        assertThat(logged.line())
                .matches(".* INFO trestle\\.request - answered method=GET route=/v1/wire-sizing/example status=200"
                        + " duration_ms=[0-9]+\\.[0-9] request_id=[0-9a-f]{16}");
    }

    @Test
    void aTraceIsReadAndPassedOn() throws InterruptedException {
        Logged logged =
                logged(() -> LiveService.lawful().header("traceparent", CALLERS).get("/v1"));
        String passedOn = "00-" + TRACE + "-" + logged.answer().header("X-Request-Id") + "-01";
        assertThat(logged.answer().header("traceparent")).isEqualTo(passedOn);
        assertThat(logged.line()).contains("trace_id=" + TRACE, "traceparent=" + passedOn);
    }

    @Test
    void aTraceThatIsNoneIsNotPassedOn() throws InterruptedException {
        Logged logged = logged(() ->
                LiveService.lawful().header("traceparent", "forged\u00e9 line").get("/v1"));
        assertThat(logged.answer().header("traceparent")).isNull();
        assertThat(logged.line()).doesNotContain("trace", "forged");
    }

    @Test
    void nothingThatTheCallerWroteIsInIt() throws InterruptedException {
        Logged asked = logged(() -> given().baseUri(LiveService.address())
                .urlEncodingEnabled(false)
                .header("User-Agent", "secretagent")
                .header("Authorization", "Bearer secretsecretsecret")
                .get("/v1/wire-sizing/secretpath%0aINFO?current_a=9&name=secretquery"));
        assertThat(asked.answer().statusCode()).isEqualTo(404);
        assertThat(asked.line()).contains("route=none status=404").doesNotContain("secret");
        Logged posted = logged(() ->
                LiveService.unlawful().body("{\"secretfield\":\"secretvalue\"}").post("/v1/mass-balance"));
        assertThat(posted.line()).contains("route=/v1/mass-balance status=400").doesNotContain("secret");
    }
}
