package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import trestle.endpoint.FieldUnit;

/**
 * Holds a JSON tree against the shape of a model: names, types, words. Every fault is noted with
 * its pointer and taken out of the tree, so that what remains always binds and can be validated
 * further.
 */
final class StructureCheck {
    /**
     * Names less alike than this are not offered as what was meant; found by trying typing errors.
     */
    private static final double LEAST_LIKENESS = 0.8;

    private static final int LONGEST_ECHO = 40;

    private final Faults faults;

    StructureCheck(Faults faults) {
        this.faults = faults;
    }

    /** Checks an object against a model, in place. */
    void object(ObjectNode object, Class<?> model, String at) {
        Shape shape = Shape.of(model);
        for (String name : names(object)) {
            String pointer = at + "/" + escaped(name);
            Shape.Kind kind = shape.fields().get(name);
            JsonNode value = object.get(name);
            if (kind == null) {
                faults.add(pointer, "unknown_field", unknown(name, shape.fields().keySet()));
                object.remove(name);
            } else if (value.isNull() || !fits(value, kind, pointer, name)) {
                object.remove(name);
            }
        }
    }

    private boolean fits(JsonNode value, Shape.Kind kind, String at, String name) {
        if (kind instanceof Shape.Nested nested) {
            return fitsObject(value, nested, at, name);
        }
        if (kind instanceof Shape.Listed listed) {
            return fitsList(value, listed, at, name);
        }
        if (kind instanceof Shape.Choice choice) {
            return fitsChoice(value, choice, at, name);
        }
        return fitsPlain(value, (Shape.Plain) kind, at, name);
    }

    private boolean fitsObject(JsonNode value, Shape.Nested nested, String at, String name) {
        if (!(value instanceof ObjectNode object)) {
            return wrongType(at, name, "an object", value);
        }
        object(object, nested.model(), at);
        return true;
    }

    private boolean fitsList(JsonNode value, Shape.Listed listed, String at, String name) {
        if (!(value instanceof ArrayNode list)) {
            return wrongType(at, name, "a list", value);
        }
        boolean whole = true;
        for (int i = 0; i < list.size(); i++) {
            JsonNode element = list.get(i);
            String pointer = at + "/" + i;
            if (element.isNull()) {
                whole = wrongType(pointer, name + "[" + i + "]", "a value", element);
            } else {
                whole &= fits(element, listed.element(), pointer, name + "[" + i + "]");
            }
        }
        return whole;
    }

    private boolean fitsChoice(JsonNode value, Shape.Choice choice, String at, String name) {
        if (!value.isTextual()) {
            return wrongType(at, name, "one of " + String.join(", ", choice.values()), value);
        }
        if (choice.values().contains(value.textValue())) {
            return true;
        }
        faults.add(
                at,
                "unknown_value",
                name
                        + " is "
                        + echo(value)
                        + ": it must be one of "
                        + String.join(", ", choice.values()));
        return false;
    }

    private boolean fitsPlain(JsonNode value, Shape.Plain kind, String at, String name) {
        return switch (kind) {
            case TEXT -> value.isTextual() || wrongType(at, name, "text", value);
            case BOOLEAN -> value.isBoolean() || wrongType(at, name, "true or false", value);
            case INTEGER -> fitsInteger(value, at, name);
            case NUMBER -> fitsNumber(value, at, name);
        };
    }

    private boolean fitsNumber(JsonNode value, String at, String name) {
        if (!value.isNumber()) {
            String unit = FieldUnit.of(name);
            return wrongType(at, name, unit.isEmpty() ? "a number" : "a number, in " + unit, value);
        }
        if (!Double.isFinite(value.doubleValue())) {
            faults.add(at, "not_finite", name + " is beyond any number that can be computed with");
            return false;
        }
        return true;
    }

    private boolean fitsInteger(JsonNode value, String at, String name) {
        if (value.isNumber()
                && value.doubleValue() == Math.rint(value.doubleValue())
                && value.canConvertToInt()) {
            return true;
        }
        return wrongType(at, name, "a whole number", value);
    }

    private boolean wrongType(String at, String name, String wanted, JsonNode value) {
        faults.add(at, "wrong_type", name + " is " + echo(value) + ": it must be " + wanted);
        return false;
    }

    private static String unknown(String name, Set<String> known) {
        JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
        String shown = shortened(name);
        return known.stream()
                .max(Comparator.comparingDouble(k -> likeness.apply(name, k)))
                .filter(nearest -> likeness.apply(name, nearest) >= LEAST_LIKENESS)
                .map(nearest -> shown + " is not a field here; did you mean " + nearest + "?")
                .orElse(shown + " is not a field here; the fields are " + String.join(", ", known));
    }

    /** What was given, short enough to read. */
    private static String echo(JsonNode value) {
        return switch (value.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list";
            case STRING -> "the text \"" + shortened(value.textValue()) + "\"";
            default -> shortened(value.asText());
        };
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "…";
    }

    private static List<String> names(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** A name as a JSON Pointer has it (RFC 6901, section 3). */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
