package trestle.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Peers that hold what they do not use. */
@Timeout(120)
class SlowPeersHttpTest {
    private static final int PLACES = 4;
    private static final String LEAD = "{\"current_a\":9,\"length_mm\":600,\"supply_voltage_v\":22}";
    private static final String HEAD = "POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
            + "Content-Type: application/json\r\nContent-Length: 100000\r\n\r\n{";

    private static Service service() {
        Settings usual = Settings.onAFreePort();
        return Service.start(new Settings(
                usual.host(), 0, usual.maxBodyBytes(), usual.maxBatchBytes(), 600, PLACES, usual.admission()));
    }

    private static Socket holding(Service service) throws IOException {
        Socket socket = new Socket("127.0.0.1", service.port());
        socket.setSoTimeout(30_000);
        socket.getOutputStream().write(HEAD.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static String answer(Socket socket) throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** All places are held; what watches the service is answered all the same, and at once. */
    @Test
    void healthAndMetricsAreAnsweredThoughEveryPlaceIsHeld() throws Exception {
        try (Service service = service()) {
            String base = "http://127.0.0.1:" + service.port();
            given().baseUri(base).get("/metrics").then().statusCode(200);
            List<Socket> held = new ArrayList<>();
            for (int i = 0; i < PLACES; i++) {
                held.add(holding(service));
            }
            Thread.sleep(300);
            given().baseUri(base)
                    .contentType("application/json")
                    .body(LEAD)
                    .post("/v1/wire-sizing")
                    .then()
                    .statusCode(503)
                    .header("Retry-After", "1")
                    .contentType("application/problem+json");
            for (String path : List.of("/health/live", "/metrics")) {
                long start = System.nanoTime();
                given().baseUri(base).get(path).then().statusCode(200);
                assertThat((System.nanoTime() - start) / 1e6)
                        .as("%s, ms: a place would be waited for 500", path)
                        .isLessThan(450);
            }
            for (Socket socket : held) {
                socket.close();
            }
        }
    }

    /** A byte now and then kept a place for as long as the sender liked. */
    @Test
    void aBodyThatDripsLosesItsPlace() throws Exception {
        try (Service service = service();
                Socket socket = holding(service)) {
            long start = System.nanoTime();
            while (socket.getInputStream().available() == 0 && System.nanoTime() - start < 20e9) {
                socket.getOutputStream().write(' ');
                Thread.sleep(200);
            }
            assertThat((System.nanoTime() - start) / 1e9).as("seconds").isBetween(4.0, 15.0);
            assertThat(answer(socket)).startsWith("HTTP/1.1 408 ").contains("/problems/timeout", "bytes a second");
        }
    }

    @Test
    void aBodyThatStopsIsToldSo() throws Exception {
        try (Service service = service();
                Socket socket = holding(service)) {
            assertThat(answer(socket))
                    .startsWith("HTTP/1.1 408 ")
                    .contains("application/problem+json", "/problems/timeout", "stopped coming");
        }
    }

    @Test
    void aBodyThatComesInPiecesAtAFairRateIsRead() throws Exception {
        String body = "{\"items\":[{\"name\":\"a\",\"mass_g\":1000,\"arm_mm\":1}]}" + " ".repeat(20_000);
        try (Service service = service();
                Socket socket = new Socket("127.0.0.1", service.port())) {
            socket.setSoTimeout(30_000);
            socket.getOutputStream()
                    .write(("POST /v1/mass-balance?bands=false HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                                    + "Content-Type: application/json\r\nContent-Length: " + body.length() + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            for (int from = 0; from < body.length(); from += 2_000) {
                socket.getOutputStream()
                        .write(body.substring(from, Math.min(body.length(), from + 2_000))
                                .getBytes(StandardCharsets.US_ASCII));
                Thread.sleep(700);
            }
            assertThat(answer(socket)).startsWith("HTTP/1.1 200 ");
        }
    }
}
