package trestle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;
import picocli.CommandLine.TypeConversionException;

/** The lines of the log. */
class LogFormTest {
    private static final Instant TIME = Instant.parse("2026-11-27T18:00:00.123456Z");

    private static LogForm.Entry entry(String message, Throwable failure) {
        return new LogForm.Entry(
                TIME,
                Level.INFO,
                "trestle.request",
                message,
                List.of(new KeyValuePair("status", 200), new KeyValuePair("route", "/v1")),
                failure);
    }

    @Test
    void aTextLineHasItsFieldsBehindTheMessage() {
        assertThat(LogForm.TEXT.write(entry("answered", null)))
                .isEqualTo("2026-11-27T18:00:00.123Z INFO trestle.request - answered status=200 route=/v1");
    }

    @Test
    void aJsonLineIsOneObjectWithItsNumbersAsNumbers() {
        assertThat(LogForm.JSON.write(entry("answered", null)))
                .isEqualTo("{\"time\":\"2026-11-27T18:00:00.123Z\",\"level\":\"INFO\",\"logger\":\"trestle.request\","
                        + "\"message\":\"answered\",\"status\":200,\"route\":\"/v1\"}");
    }

    @Test
    void aFailureStaysOnItsLine() throws IOException {
        String line = LogForm.JSON.write(entry("two\nlines \"quoted\"", new IllegalStateException("broke\nhere")));
        assertThat(line).doesNotContain("\n", "\r");
        JsonNode read = new ObjectMapper().readTree(line);
        assertThat(read.path("message").asText()).isEqualTo("two\nlines \"quoted\"");
        assertThat(read.path("failure").asText()).contains("IllegalStateException", "broke\nhere", "\tat ");
        assertThat(LogForm.TEXT.write(entry("two\nlines", new IllegalStateException("broke"))))
                .contains(
                        "two?lines status=200 route=/v1" + System.lineSeparator() + "java.lang.IllegalStateException");
    }

    @Test
    void theLogIsTheOneThatAllLogBy() {
        assertThat(LoggerFactory.getILoggerFactory()).isInstanceOf(LogToStandardError.class);
        assertThat(LoggerFactory.getLogger("trestle.request").isInfoEnabled()).isTrue();
        assertThat(LoggerFactory.getLogger("trestle.request").isDebugEnabled()).isFalse();
        assertThat(LoggerFactory.getLogger("org.eclipse.jetty").isInfoEnabled()).isFalse();
        assertThat(LoggerFactory.getLogger("org.eclipse.jetty").isWarnEnabled()).isTrue();
    }

    @Test
    void thereAreTwoForms() {
        assertThat(new LogForm.Reader().convert("json")).isEqualTo(LogForm.JSON);
        assertThat(new LogForm.Reader().convert("text")).isEqualTo(LogForm.TEXT);
        assertThatThrownBy(() -> new LogForm.Reader().convert("xml"))
                .isInstanceOf(TypeConversionException.class)
                .hasMessageContaining("text or json");
    }
}
