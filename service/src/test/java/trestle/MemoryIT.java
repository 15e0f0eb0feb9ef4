package trestle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packed service in as little memory as it may be given, under requests that fill it. */
@Timeout(120)
class MemoryIT {
    private static final int AT_ONCE = 100;

    /** As dense as a request gets: each item becomes many times its 26 bytes. */
    private static final String LONG_LIST = "{\"items\":["
            + IntStream.range(0, 16_000)
                    .mapToObj(i -> "{\"mass_g\":1.5,\"arm_mm\":2}")
                    .collect(Collectors.joining(","))
            + "]}";

    @TempDir
    private static Path folder;

    private static Process service;
    private static URI address;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        Path said = folder.resolve("said");
        service = new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-XX:+UseSerialGC",
                        "-Xmx128m",
                        "-XX:+ExitOnOutOfMemoryError",
                        "-jar",
                        "target/trestle.jar",
                        "--port",
                        "0")
                .redirectOutput(said.toFile())
                .redirectError(folder.resolve("log").toFile())
                .start();
        Pattern line = Pattern.compile("listens on (http://\\S+)");
        Matcher found = line.matcher("");
        for (int i = 0; i < 600 && !found.find(); i++) {
            Thread.sleep(100);
            found = line.matcher(Files.readString(said));
        }
        found.reset();
        assertThat(found.find()).as("the service started").isTrue();
        address = URI.create(found.group(1));
    }

    @AfterAll
    static void stop() throws InterruptedException {
        service.destroy();
        assertThat(service.waitFor(20, TimeUnit.SECONDS))
                .as("it stops when told")
                .isTrue();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(address.resolve(path)).timeout(Duration.ofSeconds(60));
    }

    @Test
    void longListsFromManyAtOnceLeaveItAlive() throws Exception {
        HttpRequest longList = to("/v1/mass-balance")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(LONG_LIST))
                .build();
        List<CompletableFuture<Integer>> answers = IntStream.range(0, AT_ONCE)
                .mapToObj(i -> client.sendAsync(longList, HttpResponse.BodyHandlers.ofString())
                        .thenApply(HttpResponse::statusCode))
                .toList();
        HttpRequest health = to("/health/live").build();
        while (!answers.stream().allMatch(CompletableFuture::isDone)) {
            assertThat(client.send(health, HttpResponse.BodyHandlers.ofString()).statusCode())
                    .isEqualTo(200);
        }
        assertThat(answers.stream().map(CompletableFuture::join).distinct().toList())
                .contains(400)
                .isSubsetOf(400, 503);
        assertThat(service.isAlive()).isTrue();
        HttpRequest example = to("/v1/mass-balance/example").build();
        assertThat(client.send(example, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(200);
        assertThat(Files.readString(folder.resolve("log"))).doesNotContain("ERROR", "OutOfMemory");
    }
}
