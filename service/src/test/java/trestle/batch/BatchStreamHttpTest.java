package trestle.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import trestle.http.Admission;
import trestle.http.Service;
import trestle.http.Settings;

/**
 * Batches as streams: nothing is held whole, and no client can make the service hold more than its
 * bounds. Written on sockets, for an HTTP library would be the one who waits.
 */
@Timeout(120)
class BatchStreamHttpTest {
    private static final String LINE = "{\"items\":[{\"name\":\"spar\",\"mass_g\":200,\"arm_mm\":500},"
            + "{\"name\":\"pack\",\"mass_g\":1200,\"arm_mm\":280}]}\n";

    private static Service service(long maxBatchBytes, int seconds, int places) {
        return Service.start(
                new Settings("127.0.0.1", 0, 1 << 20, maxBatchBytes, seconds, places, Admission.ofAnyone()));
    }

    private static Socket batch(int port, String query) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.setSoTimeout(30_000);
        socket.getOutputStream().write(head(query));
        return socket;
    }

    private static byte[] head(String query) {
        return ("POST /v1/mass-balance"
                        + query
                        + " HTTP/1.1\r\nHost: localhost\r\n"
                        + "Content-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n"
                        + "Connection: close\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] chunk(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return (Integer.toHexString(bytes.length) + "\r\n" + text + "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    private static BufferedReader reader(Socket socket) throws IOException {
        return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Lines of the answer that are JSON: neither head nor sizes of chunks. */
    private static Stream<String> answers(BufferedReader reader) {
        return reader.lines().filter(line -> line.startsWith("{"));
    }

    private static void send(OutputStream out, byte[] bytes) {
        try {
            out.write(bytes);
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    @Test
    void anAnswerComesWhileTheBatchIsStillBeingSent() throws IOException {
        try (Service service = service(1 << 20, 60, 64);
                Socket socket = batch(service.port(), "?pick=/total_mass_g")) {
            BufferedReader reader = reader(socket);
            for (int i = 0; i < 5; i++) {
                socket.getOutputStream().write(chunk(LINE));
                assertThat(answers(reader).findFirst()).hasValue("{\"total_mass_g\":1400.0}");
            }
        }
    }

    @Test
    void fiftyThousandLinesPassThroughASmallHeap() throws Exception {
        int lines = 50_000;
        Process process = smallService();
        try (BufferedReader said = process.inputReader()) {
            String listens = said.lines()
                    .filter(l -> l.contains("listens on"))
                    .findFirst()
                    .get();
            int port = Integer.parseInt(listens.replaceAll(".*:", "").strip());
            try (Socket socket = batch(port, "")) {
                Thread sender = new Thread(() -> sendAll(socket, lines));
                sender.start();
                long[] bytes = new long[1];
                long count = answers(reader(socket))
                        .peek(line -> bytes[0] += line.length())
                        .filter(line -> line.contains("\"total_mass_g\":1400.0"))
                        .count();
                sender.join();
                assertThat(count).isEqualTo(lines);
                assertThat(bytes[0]).as("more than the heap").isGreaterThan(64L << 20);
            }
            assertThat(process.isAlive()).isTrue();
        } finally {
            process.destroy();
            process.waitFor(20, TimeUnit.SECONDS);
        }
    }

    private static Process smallService() throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(
                        java,
                        "-Xmx40m",
                        "-XX:+UseSerialGC",
                        "-XX:+ExitOnOutOfMemoryError",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "trestle.Main",
                        "--port",
                        "0")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void sendAll(Socket socket, int lines) {
        try {
            byte[] hundred = chunk(LINE.repeat(100));
            for (int i = 0; i < lines / 100; i++) {
                socket.getOutputStream().write(hundred);
            }
            socket.getOutputStream().write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
        } catch (IOException closed) {
            throw new UncheckedIOException(closed);
        }
    }

    @Test
    void whoSendsFourMegabytesBeforeReadingIsAnswered() throws IOException {
        int lines = (4 << 20) / LINE.length() - 200;
        try (Service service = service(1 << 30, 60, 64);
                Socket socket = new Socket()) {
            socket.setReceiveBufferSize(1 << 16);
            socket.connect(new InetSocketAddress("127.0.0.1", service.port()));
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(head(""));
            sendAll(socket, lines / 100 * 100);
            assertThat(answers(reader(socket)).count()).isEqualTo(lines / 100 * 100);
        }
    }

    @Test
    void whoNeverReadsIsNotReadFromWithoutBound() throws Exception {
        try (Service service = service(1 << 30, 60, 64);
                SocketChannel channel = SocketChannel.open()) {
            channel.setOption(java.net.StandardSocketOptions.SO_RCVBUF, 1 << 16);
            channel.connect(new InetSocketAddress("127.0.0.1", service.port()));
            channel.configureBlocking(false);
            ByteBuffer head = ByteBuffer.wrap(head(""));
            while (head.hasRemaining()) {
                channel.write(head);
            }
            byte[] hundred = chunk(LINE.repeat(100));
            ByteBuffer next = ByteBuffer.wrap(hundred);
            long taken = 0;
            long lastTaken = System.nanoTime();
            // The answers are eighteen times as long as the requests: they fill the buffers first.
            while (System.nanoTime() - lastTaken < Duration.ofSeconds(3).toNanos() && taken < 256L << 20) {
                int count = channel.write(next);
                taken += count;
                if (count > 0) {
                    lastTaken = System.nanoTime();
                } else {
                    Thread.sleep(20);
                }
                if (!next.hasRemaining()) {
                    next = ByteBuffer.wrap(hundred);
                }
            }
            // Read ahead of 4 MB, the socket's buffers of some more on either side.
            assertThat(taken).isLessThan(32L << 20);
        }
    }

    @Test
    void anEndlessBodyIsCutOff() throws Exception {
        try (Service service = service(1 << 20, 60, 64);
                Socket socket = batch(service.port(), "?pick=/total_mass_g")) {
            Thread sender = new Thread(() -> {
                try {
                    while (true) {
                        send(socket.getOutputStream(), chunk(LINE.repeat(100)));
                    }
                } catch (IOException | UncheckedIOException closed) {
                    // As it should be: the service has had enough.
                }
            });
            sender.start();
            String last = answers(reader(socket)).reduce("", (a, b) -> b);
            assertThat(last).contains("\"type\":\"/problems/too-large\"", "1048576 bytes");
            sender.join(20_000);
            assertThat(sender.isAlive()).isFalse();
        }
    }

    @Test
    void anEndlessLineIsCutOff() throws Exception {
        try (Service service = service(8 << 20, 60, 64);
                Socket socket = batch(service.port(), "")) {
            Thread sender = new Thread(() -> {
                try {
                    while (true) {
                        send(socket.getOutputStream(), chunk("x".repeat(100_000)));
                    }
                } catch (IOException | UncheckedIOException closed) {
                    // As it should be.
                }
            });
            sender.start();
            List<String> answers = answers(reader(socket)).toList();
            assertThat(answers).hasSize(1);
            assertThat(answers.get(0)).contains("\"type\":\"/problems/too-large\"", "\"line\":1");
            sender.join(20_000);
            assertThat(sender.isAlive()).isFalse();
        }
    }

    @Test
    void anAnnouncedBodyBeyondTheBoundIsRefusedAtOnce() throws IOException {
        try (Service service = service(1000, 60, 64);
                Socket socket = new Socket("127.0.0.1", service.port())) {
            String head = new String(head(""), StandardCharsets.US_ASCII);
            socket.getOutputStream()
                    .write(head.replace("Transfer-Encoding: chunked", "Content-Length: 5000")
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(reader(socket).readLine()).contains(" 413 ");
        }
    }

    @Test
    void aBatchEndsWhenItsTimeIsUp() throws IOException {
        try (Service service = service(1 << 30, 1, 64);
                Socket socket = batch(service.port(), "?pick=/total_mass_g")) {
            Thread sender = new Thread(() -> drip(socket, LINE, 300));
            sender.start();
            List<String> answers = answers(reader(socket)).toList();
            assertThat(answers).hasSizeBetween(2, 8);
            assertThat(answers.get(answers.size() - 1))
                    .contains("\"type\":\"/problems/timeout\"", "a batch may take 1 s");
        }
    }

    @Test
    void aClientThatStallsTheServiceIsCutOff() throws IOException {
        try (Service service = service(1 << 30, 1, 64);
                Socket socket = batch(service.port(), "")) {
            long begun = System.nanoTime();
            // A byte now and then keeps the connection from being idle, and never ends a line.
            Thread sender = new Thread(() -> drip(socket, "x", 300));
            sender.start();
            InputStream in = socket.getInputStream();
            byte[] piece = new byte[1000];
            try {
                while (in.read(piece) >= 0) {
                    // Until the service hangs up.
                }
            } catch (IOException reset) {
                assertThat(reset).isNotInstanceOf(java.net.SocketTimeoutException.class);
            }
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .isBetween(Duration.ofSeconds(4), Duration.ofSeconds(14));
        }
    }

    private static void drip(Socket socket, String text, long pauseMs) {
        try {
            while (true) {
                socket.getOutputStream().write(chunk(text));
                Thread.sleep(pauseMs);
            }
        } catch (IOException closed) {
            // As it should be.
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void batchesLeavePlacesForOthers() throws IOException {
        try (Service service = service(1 << 20, 60, 8);
                Socket first = batch(service.port(), "?pick=/total_mass_g")) {
            first.getOutputStream().write(chunk(LINE));
            answers(reader(first)).findFirst();
            try (Socket second = batch(service.port(), "")) {
                List<String> head = reader(second).lines().limit(8).toList();
                assertThat(head.get(0)).contains(" 503 ");
                assertThat(head).contains("Retry-After: 1");
            }
        }
    }
}
