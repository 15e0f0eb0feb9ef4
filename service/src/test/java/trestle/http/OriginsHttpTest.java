package trestle.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Which pages may read what the service answers, once some are named. */
class OriginsHttpTest {
    private static final String BOARD = "http://board.example:9000";
    private static final String LEAD = "{\"current_a\":9,\"length_mm\":600,\"supply_voltage_v\":22}";

    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(
                Settings.onAFreePort().admitting(Admission.ofAnyone().from(List.of(BOARD))));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    @Test
    void aNamedPageMayReadTheAnswer() {
        Response answer = asked(BOARD);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Access-Control-Allow-Origin")).isEqualTo(BOARD);
        assertThat(answer.headers().getValues("Vary")).contains("Origin");
    }

    @Test
    void anotherPageIsAnsweredWithoutLeaveToRead() {
        Response answer = asked("http://elsewhere.example");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Access-Control-Allow-Origin")).isNull();
        assertThat(answer.headers().getValues("Vary")).contains("Origin");
    }

    /** A browser sends the origin with module scripts and with every POST, the page's own too. */
    @Test
    void thePagesOnBoardWorkThoughNobodyNamesThem() {
        String own = "http://127.0.0.1:" + service.port();
        assertThat(asked(own).statusCode()).isEqualTo(200);
        given().baseUri(own)
                .header("Origin", own)
                .get("/dashboard/main.js")
                .then()
                .statusCode(200);
    }

    private static Response asked(String origin) {
        return given().baseUri("http://127.0.0.1:" + service.port())
                .header("Origin", origin)
                .contentType("application/json")
                .body(LEAD)
                .post("/v1/wire-sizing");
    }
}
