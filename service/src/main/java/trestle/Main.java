package trestle;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trestle.endpoint.Version;
import trestle.http.AccessToken;
import trestle.http.Admission;
import trestle.http.PortTaken;
import trestle.http.Service;
import trestle.http.Settings;

/** Starts the service from the command line. */
@Command(
        name = "trestle",
        description = "Airframe calculations over HTTP. Every option can be given by the environment" + " too.",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        versionProvider = Main.ServiceVersion.class)
public final class Main implements Callable<Integer> {
    private static final int CHECK_FAILED = 1;
    private static final int PORT_TAKEN = 2;
    private static final int GREATEST_PORT = 65_535;

    /** A body is held whole, in one array. */
    private static final long MOST_BODY_BYTES = 1 << 30;

    @Option(
            names = "--host",
            defaultValue = "${env:TRESTLE_HOST:-127.0.0.1}",
            description = "Address to listen on; 0.0.0.0 for all. TRESTLE_HOST. Default" + " ${DEFAULT-VALUE}.")
    private String host;

    @Option(
            names = "--port",
            defaultValue = "${env:TRESTLE_PORT:-8080}",
            description = "Port to listen on; 0 takes a free one. TRESTLE_PORT. Default" + " ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--max-body-bytes",
            defaultValue = "${env:TRESTLE_MAX_BODY_BYTES:-1048576}",
            description = "Largest request body. TRESTLE_MAX_BODY_BYTES. Default ${DEFAULT-VALUE}.")
    private long maxBodyBytes;

    @Option(
            names = "--max-batch-bytes",
            defaultValue = "${env:TRESTLE_MAX_BATCH_BYTES:-1073741824}",
            description = "Largest batch of requests; each request in it may be as large as a body."
                    + " TRESTLE_MAX_BATCH_BYTES. Default ${DEFAULT-VALUE}.")
    private long maxBatchBytes;

    @Option(
            names = "--max-batch-seconds",
            defaultValue = "${env:TRESTLE_MAX_BATCH_SECONDS:-600}",
            description = "Longest time that one batch is worked on. TRESTLE_MAX_BATCH_SECONDS. Default"
                    + " ${DEFAULT-VALUE}.")
    private int maxBatchSeconds;

    @Option(
            names = "--max-concurrent-requests",
            defaultValue = "${env:TRESTLE_MAX_CONCURRENT_REQUESTS:-64}",
            description = "Requests worked on at once; further requests get a 503."
                    + " TRESTLE_MAX_CONCURRENT_REQUESTS. Default ${DEFAULT-VALUE}.")
    private int maxConcurrentRequests;

    @Option(
            names = "--allowed-origins",
            split = ",",
            defaultValue = "${env:TRESTLE_ALLOWED_ORIGINS:-}",
            description = "Origins whose pages may call the service from a browser, with commas between;"
                    + " * for all. TRESTLE_ALLOWED_ORIGINS. Default none.")
    private List<String> allowedOrigins = List.of();

    @Option(
            names = "--allowed-hosts",
            split = ",",
            defaultValue = "${env:TRESTLE_ALLOWED_HOSTS:-}",
            description = "Names by which the service may be asked, beside its address, with commas between. On the"
                    + " machine's own address, its own names (localhost) are always taken and no other is; on any other"
                    + " address every name is, unless some are listed. TRESTLE_ALLOWED_HOSTS. Default none.")
    private List<String> allowedHosts = List.of();

    @Option(
            names = "--token-file",
            defaultValue = "${env:TRESTLE_TOKEN_FILE:-" + CommandLine.Option.NULL_VALUE + "}",
            description = "File with a token of 16 characters or more, which every caller has to send as"
                    + " \"Authorization: Bearer TOKEN\", but for /health. TRESTLE_TOKEN_FILE, or the token itself in"
                    + " TRESTLE_TOKEN. Default none: whoever reaches the address is answered.")
    private Path tokenFile;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--log",
            converter = LogForm.Reader.class,
            defaultValue = "${env:TRESTLE_LOG:-text}",
            description = "How the lines of the log are written, on standard error: text, or json for a machine to"
                    + " collect. TRESTLE_LOG. Default ${DEFAULT-VALUE}.")
    private LogForm log;

    @Option(
            names = "--demo",
            description = "Also post the example aircraft to /v1/build-review and print what comes back.")
    private boolean demo;

    @Option(
            names = "--check",
            description = "Post its own example to every calculation, print how each was answered, and"
                    + " stop; exit code 1 where one was not.")
    private boolean check;

    /**
     * Starts the service and returns; it runs until it is told to stop.
     *
     * @param arguments options, see {@code --help}
     */
    public static void main(String[] arguments) {
        // One way to write a number, whatever the machine's language; and the tables of languages,
        // which the first call would wait for, stay unread.
        System.setProperty("java.locale.providers", "SPI");
        int code = new CommandLine(new Main()).execute(arguments);
        if (code != 0) {
            System.exit(code);
        }
    }

    @Override
    public Integer call() {
        // One log, not two: the validator's own would go to java.util.logging.
        System.setProperty("org.jboss.logging.provider", "slf4j");
        LogToStandardError.writeAs(log);
        requireUsable();
        Optional<AccessToken> token = token();
        Settings settings = new Settings(
                host,
                port,
                maxBodyBytes,
                maxBatchBytes,
                maxBatchSeconds,
                maxConcurrentRequests,
                new Admission(named(allowedOrigins), named(allowedHosts), token));
        try {
            Service service = Service.start(settings);
            Runtime.getRuntime().addShutdownHook(new Thread(service::close, "stop"));
            String address = "http://" + host + ":" + service.port();
            System.out.println("Trestle " + Version.current() + " listens on " + address);
            if (check) {
                boolean whole = SelfCheck.run(new Caller(address, token), System.out);
                service.close();
                return whole ? 0 : CHECK_FAILED;
            }
            if (demo) {
                System.out.print(Demo.run(new Caller(address, token)));
            }
            return 0;
        } catch (PortTaken taken) {
            System.err.println("trestle: " + taken.getMessage());
            return PORT_TAKEN;
        }
    }

    /** Refuses what would start a service that answers nothing, or none. */
    private void requireUsable() {
        require(port >= 0 && port <= GREATEST_PORT, "--port", port, "0 to " + GREATEST_PORT);
        require(
                maxBodyBytes >= 1 && maxBodyBytes <= MOST_BODY_BYTES,
                "--max-body-bytes",
                maxBodyBytes,
                "1 to " + MOST_BODY_BYTES);
        require(maxBatchBytes >= 1, "--max-batch-bytes", maxBatchBytes, "1 or more");
        require(maxBatchSeconds >= 1, "--max-batch-seconds", maxBatchSeconds, "1 or more");
        require(maxConcurrentRequests >= 1, "--max-concurrent-requests", maxConcurrentRequests, "1 or more");
    }

    private void require(boolean usable, String option, long given, String range) {
        if (!usable) {
            throw new ParameterException(spec.commandLine(), option + " is " + given + ": it may be " + range);
        }
    }

    private Optional<AccessToken> token() {
        try {
            return TokenSource.read(tokenFile, System.getenv());
        } catch (IllegalArgumentException unfit) {
            throw new ParameterException(spec.commandLine(), unfit.getMessage());
        }
    }

    /** An empty variable names nothing. */
    private static List<String> named(List<String> list) {
        return list.stream().filter(name -> !name.isBlank()).map(String::strip).toList();
    }

    /** Tells picocli the version. */
    static final class ServiceVersion implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"trestle " + Version.current()};
        }
    }
}
