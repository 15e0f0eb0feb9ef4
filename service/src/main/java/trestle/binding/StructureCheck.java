package trestle.binding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trestle.endpoint.FieldUnit;

/**
 * Holds a tree against the shape of a model: names, types, words. The leaves are read as the tree
 * has them, as JSON or as text. Every fault is noted with its pointer and taken out of the tree, so
 * that what remains always binds and can be validated further. A list that is too long is cut: ten
 * thousands of entries break too many limits to look at.
 */
final class StructureCheck {
    private final Faults faults;
    private final Leaves leaves;
    private final Map<String, Integer> cutLists = new HashMap<>();

    StructureCheck(Faults faults, Leaves leaves) {
        this.faults = faults;
        this.leaves = leaves;
    }

    /** Checks an object against a model, in place. */
    void object(ObjectNode object, Class<?> model, String at) {
        Shape shape = Shape.of(model);
        for (String name : names(object)) {
            String pointer = at + "/" + FieldPath.escaped(name);
            Shape.Kind kind = shape.fields().get(name);
            if (kind == null) {
                Set<String> known = shape.fields().keySet();
                faults.add(pointer, "unknown_field", () -> Nearest.to(name, known, "a field here"));
                object.remove(name);
                continue;
            }
            JsonNode value = leaves.read(object.get(name), kind);
            object.set(name, value);
            if (value.isNull() || !fits(value, kind, pointer, name)) {
                object.remove(name);
            }
        }
    }

    /**
     * The lists that were cut, since they have more entries than the contract lets them have: one too
     * many is left, so that the limit is still seen to be broken.
     *
     * @return how many entries each had, by its pointer
     */
    Map<String, Integer> cutLists() {
        return cutLists;
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
        if (kind == Shape.Open.OBJECT) {
            return value.isObject() || wrongType(at, name, "an object", value);
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
            JsonNode element = leaves.read(list.get(i), listed.element());
            list.set(i, element);
            String pointer = at + "/" + i;
            if (element.isNull()) {
                whole = wrongType(pointer, name + "[" + i + "]", "a value", element);
            } else {
                whole &= fits(element, listed.element(), pointer, name + "[" + i + "]");
            }
        }
        if (whole && list.size() > listed.most()) {
            cutLists.put(at, list.size());
            while (list.size() > listed.most() + 1) {
                list.remove(list.size() - 1);
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
                () -> name + " must be one of " + String.join(", ", choice.values()) + ", not " + echo(value));
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
            if (leaves == Leaves.TEXT && Leaves.hasDecimalComma(value)) {
                return decimalComma(value, at, name);
            }
            String unit = FieldUnit.of(name);
            return wrongType(at, name, unit.isEmpty() ? "a number" : "a number in " + unit, value);
        }
        if (!Double.isFinite(value.doubleValue())) {
            faults.add(at, "not_finite", () -> name + " is beyond any number that can be computed with");
            return false;
        }
        return true;
    }

    private boolean fitsInteger(JsonNode value, String at, String name) {
        if (value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue()) && value.canConvertToInt()) {
            return true;
        }
        return wrongType(at, name, "a whole number", value);
    }

    private boolean decimalComma(JsonNode value, String at, String name) {
        faults.add(
                at,
                "decimal_comma",
                () -> name
                        + " is "
                        + echo(value)
                        + ": write the decimal point as a dot and nothing between thousands, like 22.5");
        return false;
    }

    private boolean wrongType(String at, String name, String wanted, JsonNode value) {
        faults.add(at, "wrong_type", () -> name + " must be " + wanted + ", not " + echo(value));
        return false;
    }

    /** What was given, short enough to read. */
    private static String echo(JsonNode value) {
        return switch (value.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list";
            case STRING -> "the text \"" + Nearest.shortened(value.textValue()) + "\"";
            default -> Nearest.shortened(value.asText());
        };
    }

    private static List<String> names(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
