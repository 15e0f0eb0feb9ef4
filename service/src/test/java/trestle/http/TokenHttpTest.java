package trestle.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A service that asks for a token. */
class TokenHttpTest {
    private static final String TOKEN = "Kx7-qv.93_Tz~bL+0a/W==";
    private static final String BOARD = "http://board.example:9000";
    private static final String LEAD = "{\"current_a\":9,\"length_mm\":600,\"supply_voltage_v\":22}";

    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(Settings.onAFreePort()
                .admitting(Admission.ofAnyone().from(List.of(BOARD)).knowing(AccessToken.of(TOKEN))));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static RequestSpecification asking() {
        return given().baseUri("http://127.0.0.1:" + service.port()).urlEncodingEnabled(false);
    }

    private static void refused(RequestSpecification request, String path) {
        LiveService.held(request)
                .get(path)
                .then()
                .statusCode(401)
                .header("WWW-Authenticate", "Bearer")
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/unauthorized"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1",
                "/v1/wire-sizing?current_a=9&length_mm=600&supply_voltage_v=22",
                "/v1/wire-sizing/example",
                "/v1/reference/wire-gauges",
                "/openapi.json",
                "/metrics"
            })
    void nothingIsAnsweredWithoutIt(String path) {
        refused(asking(), path);
        asking().header("Authorization", "Bearer " + TOKEN).get(path).then().statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/docs/",
                "/dashboard/",
                "/docs/swagger-ui.css",
                "/no-such",
                "/health",
                "/health/",
                "/health/live/",
                "/health/live;a",
                "/health/../v1",
                "/health/live/..;/../v1",
                "/health/%6cive"
            })
    void nothingElseIsEither(String path) {
        assertThat(asking().get(path).statusCode()).isIn(400, 401);
    }

    @ParameterizedTest
    @ValueSource(strings = {"//health/live", "/health//live", "/v1/../health/live", "http://localhost/v1"})
    void noWayRoundLeadsPastIt(String path) {
        assertThat(RawHttp.answerTo(
                        service.port(), "GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 40[01] .*");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/health/live", "/health/ready"})
    void healthIsToldToAnyone(String path) {
        assertThat(asking().get(path).statusCode()).isIn(200, 503);
        assertThat(asking().header("Host", "probe.example").get(path).statusCode())
                .isIn(200, 503);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Bearer",
                "Bearer ",
                "Bearer Kx7-qv.93_Tz~bL+0a/W=",
                "Bearer Kx7-qv.93_Tz~bL+0a/W===",
                "Bearer kx7-qv.93_Tz~bL+0a/W==",
                "Bearer Kx7-qv.93_Tz~bL+0a/W== more",
                "Bearer, Kx7-qv.93_Tz~bL+0a/W==",
                "Basic Kx7-qv.93_Tz~bL+0a/W==",
                "Kx7-qv.93_Tz~bL+0a/W=="
            })
    void whatIsNotQuiteItIsNotIt(String header) {
        refused(asking().header("Authorization", header), "/v1");
    }

    @Test
    void itIsNotSearchedForAmongSeveral() {
        refused(asking().header("Authorization", "Bearer " + TOKEN, "Bearer " + TOKEN + "x"), "/v1");
    }

    @Test
    void theNameOfTheSchemeIsTakenInAnyCase() {
        asking().header("Authorization", "bearer  " + TOKEN).get("/v1").then().statusCode(200);
    }

    @Test
    void aPostIsRefusedBeforeItsBodyIsRead() {
        String answer = RawHttp.answerTo(
                service.port(),
                "POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                        + "Content-Length: 1000000\r\n\r\n{");
        assertThat(answer).startsWith("HTTP/1.1 401 ").contains("/problems/unauthorized");
        asking().header("Authorization", "Bearer " + TOKEN)
                .contentType("application/json")
                .body(LEAD)
                .post("/v1/wire-sizing")
                .then()
                .statusCode(200);
    }

    /** A browser sends no token with the question whether it may. */
    @Test
    void aPageMayAskAndMayReadTheRefusal() {
        asking().header("Origin", BOARD)
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "authorization,content-type")
                .options("/v1/wire-sizing")
                .then()
                .header("Access-Control-Allow-Origin", BOARD)
                .header("Access-Control-Allow-Headers", "authorization,content-type");
        asking().header("Origin", BOARD).get("/v1").then().statusCode(401).header("Access-Control-Allow-Origin", BOARD);
        assertThat(asking().header("Origin", "http://elsewhere.example")
                        .get("/v1")
                        .header("Access-Control-Allow-Origin"))
                .isNull();
    }

    @Test
    void neitherTheTokenNorWhatWasTriedIsLogged() throws InterruptedException {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            asking().header("Authorization", "Bearer " + TOKEN)
                    .get("/v1")
                    .then()
                    .statusCode(200);
            refused(asking().header("Authorization", "Bearer tried-tried-tried"), "/v1");
            for (int i = 0; i < 500 && !said.toString(StandardCharsets.UTF_8).contains("status=401"); i++) {
                Thread.sleep(10);
            }
        } finally {
            System.setErr(before);
        }
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("status=401").doesNotContain(TOKEN, "tried");
        assertThat(AccessToken.of(TOKEN).toString()).doesNotContain(TOKEN);
        assertThat(Settings.onAFreePort()
                        .admitting(Admission.ofAnyone().knowing(AccessToken.of(TOKEN)))
                        .toString())
                .doesNotContain(TOKEN);
    }
}
