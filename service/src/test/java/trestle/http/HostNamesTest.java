package trestle.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** By which names the service is asked: a page that has its own name lead here must not be answered. */
class HostNamesTest {
    @ParameterizedTest
    @CsvSource({
        "127.0.0.1, true",
        "127.8.9.1, true",
        "localhost, true",
        "LOCALHOST, true",
        "localhost., true",
        "[::1], true",
        "bench.example, true",
        "pages.example, false",
        "127.0.0.1.pages.example, false",
        "localhost.pages.example, false",
        "192.168.0.7, false",
        "0.0.0.0, false"
    })
    void onTheMachinesOwnAddressOnlyItsOwnNamesAndThoseListed(String host, boolean taken) {
        assertThat(new HostNames("127.0.0.1", List.of("bench.example")).include(host))
                .isEqualTo(taken);
    }

    @Test
    void onAnyOtherAddressEveryNameUnlessSomeAreListed() {
        assertThat(new HostNames("0.0.0.0", List.of()).include("pages.example")).isTrue();
        HostNames listed = new HostNames("0.0.0.0", List.of("bench.example"));
        assertThat(listed.include("bench.example")).isTrue();
        assertThat(listed.include("localhost")).isTrue();
        assertThat(listed.include("pages.example")).isFalse();
    }

    @Test
    void whoNamesNoneComesFromNoPage() {
        assertThat(new HostNames("127.0.0.1", List.of()).include(null)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pages.example", "pages.example:8080", "pages.example@localhost", "[::2]:80"})
    void theServiceAnswersNoOtherName(String host) {
        assertThat(RawHttp.answerTo("GET /v1 HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 4(21|00) .*")
                .contains("application/problem+json")
                .doesNotContain("calculations");
    }

    @Test
    void theServiceAnswersItsOwn() {
        assertThat(RawHttp.answerTo("GET /v1 HTTP/1.1\r\nHost: localhost:9\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200 ");
        assertThat(RawHttp.answerTo(
                        "GET http://pages.example/v1 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .doesNotContain("calculations");
    }
}
