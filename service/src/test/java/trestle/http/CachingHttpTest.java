package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.blankString;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;

/** What spreadsheets and caches send around a GET: HEAD, OPTIONS and validators. */
class CachingHttpTest {
    private static final String WIRE = "/v1/wire-sizing";
    private static final Map<String, String> RUN =
            Map.of("current_a", "28", "length_mm", "620", "supply_voltage_v", "22.2");

    /** Every path that can be got. */
    static List<String> paths() {
        Map<String, Object> all =
                LiveService.lawful().get("/openapi.json").jsonPath().getMap("paths");
        List<String> calculations =
                Catalogue.calculations().stream().map(Calculation::name).toList();
        Set<String> paths = new HashSet<>();
        for (String path : all.keySet()) {
            calculations.forEach(name -> paths.add(path.replace("{calculation}", name)));
        }
        paths.removeIf(path -> path.contains("{"));
        return List.copyOf(paths);
    }

    private static RequestSpecification run() {
        return LiveService.lawful().queryParams(RUN);
    }

    private static String tag(RequestSpecification request) {
        Response answer = request.get(WIRE);
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.header("ETag");
    }

    @ParameterizedTest
    @MethodSource("paths")
    void optionsNameTheMethods(String path) {
        LiveService.unchecked()
                .options(path)
                .then()
                .statusCode(204)
                .header("Allow", containsString("GET, HEAD, OPTIONS"));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void headIsGetWithoutTheBody(String path) {
        Response get = LiveService.unchecked().get(path);
        Response head = LiveService.unchecked().head(path);
        assertThat(head.statusCode()).isEqualTo(get.statusCode());
        assertThat(head.contentType()).isEqualTo(get.contentType());
        assertThat(head.asString()).isEmpty();
    }

    @Test
    void headHasTheTagOfTheGet() {
        Response head = LiveService.unchecked().queryParams(RUN).head(WIRE);
        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(head.header("ETag")).isEqualTo(tag(run()));
        assertThat(head.header("Content-Length")).isNull();
    }

    @Test
    void anAnswerMayBeKeptForADay() {
        run().get(WIRE)
                .then()
                .header("Cache-Control", equalTo("public, max-age=86400"))
                .header("Vary", equalTo("Accept, Accept-Encoding"));
    }

    @Test
    void theTagIsStrongAndStays() {
        String tag = tag(run());
        assertThat(tag).matches("\"[A-Za-z0-9_-]{22}\"").isEqualTo(tag(run()));
    }

    @Test
    void anotherWayToWriteTheRequestHasTheSameTag() {
        String spelt = tag(LiveService.lawful()
                .queryParam("supply_voltage_v", "22.20")
                .queryParam("length_mm", "6.2e2")
                .queryParam("current_a", "28.0"));
        assertThat(spelt).isEqualTo(tag(run()));
    }

    @Test
    void whatChangesTheBytesChangesTheTag() {
        Set<String> tags = Set.of(
                tag(run()),
                tag(run().queryParam("ambient_c", "25.0000000001")),
                tag(run().queryParam("as", "csv")),
                tag(run().queryParam("as", "text")),
                tag(run().queryParam("pick", "/verdict")),
                tag(run().queryParam("pick", "/total_drop_v")));
        assertThat(tags).hasSize(6);
    }

    @Test
    void compressedBytesHaveATagOfTheirOwn() throws IOException, InterruptedException {
        HttpResponse<byte[]> plain = send("identity");
        HttpResponse<byte[]> compressed = send("gzip");
        assertThat(compressed.headers().firstValue("Content-Encoding")).hasValue("gzip");
        assertThat(compressed.body().length).isLessThan(plain.body().length);
        assertThat(compressed.headers().firstValue("ETag"))
                .isPresent()
                .isNotEqualTo(plain.headers().firstValue("ETag"));
    }

    /** By the JDK's client, which does not undo the compression behind the caller's back. */
    private static HttpResponse<byte[]> send(String coding) throws IOException, InterruptedException {
        String query = "?current_a=28&length_mm=620&supply_voltage_v=22.2";
        HttpRequest request = HttpRequest.newBuilder(URI.create(LiveService.address() + WIRE + query))
                .header("Accept-Encoding", coding)
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    @ParameterizedTest
    @ValueSource(strings = {"*", "TAG", "\"a\", TAG", "W/TAG", "\"a,b\",\tTAG , \"c\""})
    void whoHoldsTheAnswerDoesNotGetItAgain(String header) {
        String tag = tag(run());
        run().header("If-None-Match", header.replace("TAG", tag))
                .get(WIRE)
                .then()
                .statusCode(304)
                .header("ETag", equalTo(tag))
                .header("Cache-Control", equalTo("public, max-age=86400"))
                .header("Content-Length", nullValue())
                .body(blankString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"a\"", "TA", "\"\"", "garbage"})
    void whoHoldsAnotherGetsThisOne(String header) {
        run().header("If-None-Match", header).get(WIRE).then().statusCode(200);
    }

    @Test
    void aWrongRequestIsWrongWhateverTheCallerHolds() {
        LiveService.unlawful()
                .header("If-None-Match", "*")
                .queryParam("current_a", "-1")
                .get(WIRE)
                .then()
                .statusCode(400)
                .header("ETag", nullValue())
                .header("Cache-Control", nullValue());
    }

    @Test
    void aContradictionIsNotKept() {
        LiveService.unlawful()
                .queryParams(RUN)
                .queryParam("peak_current_a", "12")
                .get(WIRE)
                .then()
                .statusCode(422)
                .header("ETag", nullValue())
                .header("Cache-Control", nullValue());
    }
}
