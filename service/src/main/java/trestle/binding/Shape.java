package trestle.binding;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import jakarta.validation.constraints.Size;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a generated request model accepts: the kind of each field by its name on the wire. Worked
 * out once for each class, so that no request pays for reflection.
 *
 * @param fields kind of each field, by name on the wire
 * @param wireNames name on the wire of each record component
 */
record Shape(Map<String, Kind> fields, Map<String, String> wireNames) {
    private static final Map<Class<?>, Shape> KNOWN = new ConcurrentHashMap<>();

    /** The kind of a value. */
    sealed interface Kind {}

    /** A plain value. */
    enum Plain implements Kind {
        NUMBER,
        INTEGER,
        TEXT,
        BOOLEAN
    }

    /**
     * One of some words.
     *
     * @param values the words
     */
    record Choice(List<String> values) implements Kind {}

    /**
     * An object of a known model. Its shape is looked up when needed, for models may hold each
     * other.
     *
     * @param model the generated class
     */
    record Nested(Class<?> model) implements Kind {}

    /** An object that the model leaves open: a study's request of another calculation. */
    enum Open implements Kind {
        OBJECT
    }

    /**
     * A list.
     *
     * @param element kind of its elements
     * @param most entries that the contract lets it have
     */
    record Listed(Kind element, int most) implements Kind {}

    static Shape of(Class<?> model) {
        Shape known = KNOWN.get(model);
        if (known == null) {
            known = read(model);
            KNOWN.put(model, known);
        }
        return known;
    }

    /** Works a shape out, whether or not it is known already. */
    static Shape read(Class<?> model) {
        Map<String, Kind> fields = new LinkedHashMap<>();
        Map<String, String> wireNames = new LinkedHashMap<>();
        for (RecordComponent component : model.getRecordComponents()) {
            Field field = field(model, component);
            String wireName = field.getAnnotation(JsonProperty.class).value();
            fields.put(wireName, kind(component.getGenericType(), field.getAnnotation(Size.class)));
            wireNames.put(component.getName(), wireName);
        }
        return new Shape(fields, wireNames);
    }

    private static Field field(Class<?> model, RecordComponent component) {
        try {
            return model.getDeclaredField(component.getName());
        } catch (NoSuchFieldException impossible) {
            throw new IllegalStateException("a record without a field of its own", impossible);
        }
    }

    private static Kind kind(Type type, Size size) {
        if (type instanceof ParameterizedType open && open.getRawType() == Map.class) {
            return Open.OBJECT;
        }
        if (type instanceof ParameterizedType list) {
            return new Listed(
                    kind(list.getActualTypeArguments()[0], null), size == null ? Integer.MAX_VALUE : size.max());
        }
        if (type == Double.class) {
            return Plain.NUMBER;
        }
        if (type == Integer.class) {
            return Plain.INTEGER;
        }
        if (type == String.class) {
            return Plain.TEXT;
        }
        if (type == Boolean.class) {
            return Plain.BOOLEAN;
        }
        Class<?> model = (Class<?>) type;
        return model.isEnum() ? new Choice(words(model)) : new Nested(model);
    }

    private static List<String> words(Class<?> choice) {
        Method word = Arrays.stream(choice.getMethods())
                .filter(method -> method.isAnnotationPresent(JsonValue.class))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no words of " + choice));
        return Arrays.stream(choice.getEnumConstants())
                .map(constant -> word(word, constant))
                .toList();
    }

    private static String word(Method word, Object constant) {
        try {
            return (String) word.invoke(constant);
        } catch (ReflectiveOperationException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
