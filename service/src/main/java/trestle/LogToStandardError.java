package trestle;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.ILoggerFactory;
import org.slf4j.IMarkerFactory;
import org.slf4j.Logger;
import org.slf4j.helpers.BasicMarkerFactory;
import org.slf4j.helpers.NOPMDCAdapter;
import org.slf4j.spi.MDCAdapter;
import org.slf4j.spi.SLF4JServiceProvider;

/**
 * The log: lines on standard error, which whoever runs the service collects. Written here because the small library
 * for this writes no JSON, and those that do bring files, threads and a language for their settings, and take longer
 * to load than the service itself. Found by SLF4J, which all that is in the jar logs by.
 */
public final class LogToStandardError implements SLF4JServiceProvider, ILoggerFactory {
    private static volatile LogForm form = LogForm.TEXT;

    private final Map<String, Logger> loggers = new ConcurrentHashMap<>();
    private final IMarkerFactory markers = new BasicMarkerFactory();
    private final MDCAdapter context = new NOPMDCAdapter();

    /** For SLF4J. */
    public LogToStandardError() {}

    /** Chooses how all further lines are written. */
    static void writeAs(LogForm chosen) {
        form = chosen;
    }

    static void write(LogForm.Entry entry) {
        System.err.println(form.write(entry));
    }

    @Override
    public Logger getLogger(String name) {
        return loggers.computeIfAbsent(name, LineLogger::new);
    }

    @Override
    public ILoggerFactory getLoggerFactory() {
        return this;
    }

    @Override
    public IMarkerFactory getMarkerFactory() {
        return markers;
    }

    @Override
    public MDCAdapter getMDCAdapter() {
        return context;
    }

    /** The version of SLF4J's own interface that this is written for. */
    @Override
    public String getRequestedApiVersion() {
        return "2.0.99";
    }

    @Override
    public void initialize() {
        // Nothing to read: there are no settings but the form.
    }
}
