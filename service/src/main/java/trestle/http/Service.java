package trestle.http;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import java.time.Duration;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.server.handler.QoSHandler;

/** The running service. */
public final class Service implements AutoCloseable {
    /** A client that sends nothing for this long holds a thread and is let go. */
    private static final long IDLE_TIMEOUT_MS = 15_000;

    /** Running requests may take this long to finish when the service is told to stop. */
    private static final long STOP_TIMEOUT_MS = 10_000;

    /** How long a request waits for a place before it is told that the service is busy. */
    private static final Duration LONGEST_WAIT = Duration.ofMillis(500);

    /** An aircraft as a query is long; spreadsheets send up to 40,000 characters. */
    private static final int LONGEST_HEADER_BYTES = 1 << 16;

    private static final int FIRST_JAVA_WITH_VIRTUAL_THREADS = 21;

    /** What watches the service must get through when callers do not. */
    private static final String[] OWN_WAY_IN = {"/health/*", "/metrics"};

    private final Javalin javalin;

    private Service(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Starts the service.
     *
     * @param settings how it runs
     * @return the running service
     * @throws PortTaken when the address is in use
     */
    public static Service start(Settings settings) {
        Metrics metrics = new Metrics();
        Routes routes = new Routes(settings, metrics);
        routes.warmUp();
        Javalin javalin = Javalin.create(config -> configure(config, settings, routes, metrics));
        try {
            javalin.start();
            return new Service(javalin);
        } catch (JavalinBindException taken) {
            throw new PortTaken(settings.host(), settings.port(), taken);
        }
    }

    /**
     * The port that the service listens on.
     *
     * @return the port
     */
    public int port() {
        return javalin.port();
    }

    /** Stops taking requests, finishes the running ones, and ends. */
    @Override
    public void close() {
        javalin.stop();
    }

    private static void configure(JavalinConfig config, Settings settings, Routes routes, Metrics metrics) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = settings.maxBodyBytes();
        config.http.prefer405over404 = true;
        config.http.defaultContentType = "application/json";
        config.concurrency.useVirtualThreads = Runtime.version().feature() >= FIRST_JAVA_WITH_VIRTUAL_THREADS;
        config.router.treatMultipleSlashesAsSingleSlash = true;
        config.jetty.modifyServer(server -> harden(server, settings, metrics));
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setRequestHeaderSize(LONGEST_HEADER_BYTES);
        });
        config.jetty.addConnector((server, http) -> {
            ServerConnector connector =
                    new ServerConnector(server, new org.eclipse.jetty.server.HttpConnectionFactory(http));
            connector.setHost(settings.host());
            connector.setPort(settings.port());
            connector.setIdleTimeout(IDLE_TIMEOUT_MS);
            return connector;
        });
        if (!settings.admission().origins().isEmpty()) {
            config.bundledPlugins.enableCors(cors -> cors.addRule(rule -> allow(rule, settings)));
            config.routes.beforeMatched(Service::answerAllTheSame);
        }
        routes.register(config.routes);
    }

    private static void allow(io.javalin.plugin.bundled.CorsPluginConfig.CorsRule rule, Settings settings) {
        if (settings.admission().origins().contains("*")) {
            rule.anyHost();
        } else {
            settings.admission().origins().forEach(rule::allowHost);
        }
    }

    /**
     * The plugin marks an answer to any other origin as a bad request. But the browser keeps that
     * answer from the page anyway, and the service's own pages send their origin too, though nobody
     * lists it. What is kept for an {@code <img>} must not be given to a page that asks by script.
     */
    private static void answerAllTheSame(Context context) {
        context.status(HttpStatus.OK);
        if (context.res().getHeader("Vary") == null) {
            context.res().setHeader("Vary", "Origin");
        }
    }

    private static void harden(Server server, Settings settings, Metrics metrics) {
        server.setStopTimeout(STOP_TIMEOUT_MS);
        server.setRequestLog(new RequestLog(metrics));
        server.setErrorHandler(new ServerProblems(settings.admission()));
        server.insertHandler(new BodyLimit(settings.maxBodyBytes()));
        server.insertHandler(new GracefulHandler());
        QoSHandler places = new QoSHandler();
        places.setMaxRequestCount(settings.maxConcurrentRequests());
        places.setMaxSuspend(LONGEST_WAIT);
        places.excludePath(OWN_WAY_IN);
        metrics.gauge(
                "trestle_requests_waiting",
                "Requests that wait for a place; one that waits too long is refused.",
                places::getSuspendedRequestCount);
        server.insertHandler(places);
        server.insertHandler(new Guard(
                settings.admission(),
                new HostNames(settings.host(), settings.admission().hosts())));
        server.insertHandler(new Watch(metrics));
    }
}
