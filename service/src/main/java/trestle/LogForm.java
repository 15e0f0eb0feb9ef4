package trestle;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How a line of the log is written. */
enum LogForm {
    /** For a person to read: time, level, logger, message, fields. What broke follows on lines of its own. */
    TEXT {
        @Override
        String write(Entry entry) {
            StringBuilder line = new StringBuilder();
            line.append(entry.time().truncatedTo(ChronoUnit.MILLIS))
                    .append(' ')
                    .append(entry.level())
                    .append(' ')
                    .append(entry.logger())
                    .append(" - ")
                    .append(entry.message().replaceAll("\\p{Cntrl}", "?"));
            entry.fields()
                    .forEach(field ->
                            line.append(' ').append(field.key).append('=').append(field.value));
            if (entry.failure() != null) {
                line.append(System.lineSeparator()).append(entry.trace().stripTrailing());
            }
            return line.toString();
        }
    },

    /** For a machine: one JSON object a line, whatever is in it. */
    JSON {
        @Override
        String write(Entry entry) {
            StringWriter line = new StringWriter();
            try (JsonGenerator json = FACTORY.createGenerator(line)) {
                json.writeStartObject();
                json.writeStringField(
                        "time", entry.time().truncatedTo(ChronoUnit.MILLIS).toString());
                json.writeStringField("level", entry.level().toString());
                json.writeStringField("logger", entry.logger());
                json.writeStringField("message", entry.message());
                for (KeyValuePair field : entry.fields()) {
                    json.writeFieldName(field.key);
                    value(json, field.value);
                }
                if (entry.failure() != null) {
                    json.writeStringField("failure", entry.trace());
                }
                json.writeEndObject();
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
            return line.toString();
        }
    };

    private static final JsonFactory FACTORY = new JsonFactory();

    /**
     * What a line says.
     *
     * @param time when it was written
     * @param level how grave it is
     * @param logger who says it
     * @param message what
     * @param fields names and values that belong to it
     * @param failure what broke; null where nothing did
     */
    record Entry(
            Instant time, Level level, String logger, String message, List<KeyValuePair> fields, Throwable failure) {

        String trace() {
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace, true));
            return trace.toString();
        }
    }

    abstract String write(Entry entry);

    private static void value(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else {
            json.writeString(String.valueOf(value));
        }
    }

    /** Reads the option's word. */
    static final class Reader implements ITypeConverter<LogForm> {
        @Override
        public LogForm convert(String word) {
            return switch (word) {
                case "text" -> TEXT;
                case "json" -> JSON;
                default -> throw new TypeConversionException("the log is written as text or json, not as " + word);
            };
        }
    }
}
