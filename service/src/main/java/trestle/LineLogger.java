package trestle;

import java.time.Instant;
import java.util.List;
import org.slf4j.Marker;
import org.slf4j.event.Level;
import org.slf4j.event.LoggingEvent;
import org.slf4j.helpers.LegacyAbstractLogger;
import org.slf4j.helpers.MessageFormatter;
import org.slf4j.spi.LoggingEventAware;

/** A logger that writes a line for what is grave enough: what we say from information on, what libraries say from warnings on. */
final class LineLogger extends LegacyAbstractLogger implements LoggingEventAware {
    private static final long serialVersionUID = 1;
    private static final String OURS = "trestle.";

    private final Level least;

    LineLogger(String name) {
        this.name = name;
        least = name.startsWith(OURS) ? Level.INFO : Level.WARN;
    }

    private boolean grave(Level level) {
        return level.toInt() >= least.toInt();
    }

    @Override
    public boolean isTraceEnabled() {
        return grave(Level.TRACE);
    }

    @Override
    public boolean isDebugEnabled() {
        return grave(Level.DEBUG);
    }

    @Override
    public boolean isInfoEnabled() {
        return grave(Level.INFO);
    }

    @Override
    public boolean isWarnEnabled() {
        return grave(Level.WARN);
    }

    @Override
    public boolean isErrorEnabled() {
        return grave(Level.ERROR);
    }

    /** A line with fields of its own. */
    @Override
    public void log(LoggingEvent event) {
        String message = MessageFormatter.basicArrayFormat(event.getMessage(), event.getArgumentArray());
        LogToStandardError.write(new LogForm.Entry(
                Instant.now(),
                event.getLevel(),
                name,
                message,
                event.getKeyValuePairs() == null ? List.of() : event.getKeyValuePairs(),
                event.getThrowable()));
    }

    @Override
    protected void handleNormalizedLoggingCall(
            Level level, Marker marker, String pattern, Object[] arguments, Throwable failure) {
        String message = MessageFormatter.basicArrayFormat(pattern, arguments);
        LogToStandardError.write(new LogForm.Entry(Instant.now(), level, name, message, List.of(), failure));
    }

    @Override
    protected String getFullyQualifiedCallerName() {
        return null;
    }
}
