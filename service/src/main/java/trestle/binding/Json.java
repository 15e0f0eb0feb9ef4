package trestle.binding;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.util.TokenBuffer;
import java.io.IOException;
import trestle.numeric.Decimal;

/** The one JSON mapper: strict in, finite and rounded out. */
public final class Json {
    /** A request nests a handful of levels; a body that nests more is an attack or a mistake. */
    private static final int DEEPEST_NESTING = 32;

    /**
     * Ten times what the largest aircraft needs. A body may be all brackets and commas, and its
     * tree is many times its size.
     */
    private static final int MOST_TOKENS = 100_000;

    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_TEXT = 20_000;

    /** Nine digits are beyond any input's precision and hide the last bits of a double. */
    private static final int DIGITS = 9;

    /** The mapper. */
    public static final ObjectMapper MAPPER = mapper();

    private static final ObjectMapper UNROUNDED = new ObjectMapper();

    private Json() {}

    /**
     * Writes a value with its numbers rounded.
     *
     * @param value an answer, or a tree
     * @return UTF-8 text
     */
    public static byte[] bytes(Object value) {
        try {
            return MAPPER.writeValueAsBytes(value);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("an answer could not be written", unwritable);
        }
    }

    /**
     * Writes a value with every digit: two requests that differ at all differ here.
     *
     * @param value a request
     * @return UTF-8 text
     */
    public static byte[] exactBytes(Object value) {
        try {
            return UNROUNDED.writeValueAsBytes(value);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException("a request could not be written", unwritable);
        }
    }

    private static ObjectMapper mapper() {
        JsonFactory factory = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST_NESTING)
                        .maxTokenCount(MOST_TOKENS)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxNameLength(LONGEST_NAME)
                        .maxStringLength(LONGEST_TEXT)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .build();
        SimpleModule module = new SimpleModule();
        module.addSerializer(Double.class, new RoundedDouble());
        module.addSerializer(double.class, new RoundedDouble());
        return JsonMapper.builder(factory)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .addModule(module)
                .build();
    }

    private static final class RoundedDouble extends StdSerializer<Double> {
        private static final long serialVersionUID = 1L;

        RoundedDouble() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            if (!Double.isFinite(value)) {
                throw new IllegalStateException("an answer holds a number that is not finite");
            }
            String rounded = Decimal.significant(value, DIGITS);
            // A tree of nodes holds a number that is read again; a stream takes the text as it stands.
            if (out instanceof TokenBuffer) {
                out.writeNumber(Double.parseDouble(rounded));
            } else {
                out.writeNumber(rounded);
            }
        }
    }
}
