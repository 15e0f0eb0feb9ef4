package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no HTTP library sends: each is the sender's fault, and never a failure of ours. */
class MalformedHttpTest {
    private static final String GOOD = "{\"items\":[{\"name\":\"a\",\"mass_g\":1000,\"arm_mm\":1}]}";

    private static final String CHUNKED = """
            POST /v1/mass-balance HTTP/1.1\r
            Host: localhost\r
            Connection: close\r
            Content-Type: %s\r
            Transfer-Encoding: chunked\r
            \r
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "application/json; charset=nope|415",
                "application/json; charset=\"|415",
                "application/json; charset=utf-8|200",
                "application/json; charset=ISO-8859-1|200",
                "application/x-ndjson; charset=nope|200",
                "text/csv; charset=nope|415"
            })
    void aCharsetIsKnownOrRefused(String contentType, int status) {
        String answer = RawHttp.answerTo(
                "POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: " + contentType
                        + "\r\nContent-Length: " + GOOD.length() + "\r\n\r\n" + GOOD);
        assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
        if (status != 200) {
            assertThat(answer).contains("application/problem+json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"zz", "ffffffffffffffff", "-1", ""})
    void aChunkOfNoSizeIsABodyThatBreaksOff(String size) {
        String answer =
                RawHttp.answerTo(CHUNKED.formatted("application/json") + size + "\r\n" + GOOD + "\r\n0\r\n\r\n");
        assertThat(answer).startsWith("HTTP/1.1 400 ").contains("application/problem+json", "the body broke off");
    }

    /** What came before stands; a reader of the answers sees that there is no more. */
    @Test
    void aBatchThatBreaksOffSaysSo() {
        String line = GOOD + "\n";
        String answer = RawHttp.answerTo(CHUNKED.formatted("application/x-ndjson") + Integer.toHexString(line.length())
                + "\r\n" + line + "\r\nzz\r\n" + line + "\r\n0\r\n\r\n");
        assertThat(answer)
                .startsWith("HTTP/1.1 200 ")
                .contains("total_mass_g", "the batch broke off here", "\"line\":2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GET /v1 HTTP/0.9|505|http-version",
                "GET /v1 HTTP/3.0|505|http-version",
                "GET /v1 HTTP/1.7|505|http-version",
                "GET /v1 FTP/1.1|505|http-version",
                "GET /v1|505|http-version",
                "GET /v1 HTTP/2.0|400|malformed-request",
                "GET /% HTTP/1.1|400|malformed-request",
                "GET /%00 HTTP/1.1|400|malformed-request",
                "GET /v1/mass-balance/..%2f HTTP/1.1|404|not-found"
            })
    void aRequestLineThatCannotBeReadIsAProblem(String line, int status, String kind) {
        assertThat(RawHttp.answerTo(line + "\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 " + status + " ")
                .contains("application/problem+json", "/problems/" + kind);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Content-Length: -1", "Content-Length: abc", "Content-Length: 5\r\nContent-Length: 6"})
    void aLengthThatIsNoneIsAProblem(String header) {
        assertThat(RawHttp.answerTo(
                        "POST /v1/mass-balance HTTP/1.1\r\nHost: localhost\r\n" + header + "\r\n\r\n" + GOOD))
                .startsWith("HTTP/1.1 400 ")
                .contains("/problems/malformed-request");
    }

    @Test
    void anEmptyNameIsCalledSo() {
        LiveService.unlawful()
                .queryParam("pick", "/")
                .body(GOOD)
                .post("/v1/mass-balance")
                .then()
                .statusCode(422)
                .body("errors[0].at", equalTo("/"))
                .body("errors[0].message", startsWith("an empty name is not in the answer; known are verdict,"));
    }
}
