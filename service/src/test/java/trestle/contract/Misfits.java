package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where a value does not keep its schema: ranges, sizes, words, names, what is required. */
public final class Misfits {
    private final List<String> found = new ArrayList<>();

    private Misfits() {}

    /**
     * Holds a value against a schema.
     *
     * @param value a JSON tree
     * @param schema of the contract
     * @return a place and what is wrong there, each
     */
    public static List<String> of(JsonNode value, JsonNode schema) {
        Misfits misfits = new Misfits();
        misfits.hold(value, schema, "");
        return misfits.found;
    }

    private void hold(JsonNode value, JsonNode schema, String at) {
        JsonNode known = Contract.resolved(schema);
        if (value.isObject()) {
            object(value, known, at);
        } else if (value.isArray()) {
            list(value, known, at);
        } else if (value.isNumber()) {
            number(value.asDouble(), known, at);
        } else if (value.isTextual()) {
            text(value.asText(), known, at);
        } else if (!value.isBoolean() || !type(known).equals("boolean")) {
            wrong(at, "is " + value);
        }
    }

    private void object(JsonNode value, JsonNode schema, String at) {
        Map<String, JsonNode> properties = Contract.properties(schema);
        for (String name : Contract.required(schema)) {
            if (!value.has(name)) {
                wrong(at + "/" + name, "is missing");
            }
        }
        for (Map.Entry<String, JsonNode> field : value.properties()) {
            JsonNode known = properties.get(field.getKey());
            if (known == null && Contract.isOpen(schema)) {
                continue;
            }
            if (known == null) {
                wrong(at + "/" + field.getKey(), "is not in the contract");
            } else {
                hold(field.getValue(), known, at + "/" + field.getKey());
            }
        }
    }

    private void list(JsonNode value, JsonNode schema, String at) {
        if (!schema.has("items")) {
            wrong(at, "is a list");
            return;
        }
        if (value.size() > schema.path("maxItems").asInt(Integer.MAX_VALUE)
                || value.size() < schema.path("minItems").asInt(0)) {
            wrong(at, "has " + value.size() + " entries");
        }
        for (int i = 0; i < value.size(); i++) {
            hold(value.get(i), schema.path("items"), at + "/" + i);
        }
    }

    private void number(double value, JsonNode schema, String at) {
        boolean whole = type(schema).equals("integer") && value == Math.rint(value);
        if (!whole && !type(schema).equals("number")) {
            wrong(at, "is the number " + value);
        } else if (!Double.isFinite(value)
                || value < schema.path("minimum").asDouble(-Double.MAX_VALUE)
                || value > schema.path("maximum").asDouble(Double.MAX_VALUE)
                || (schema.path("exclusiveMinimum").asBoolean()
                        && value == schema.path("minimum").asDouble())) {
            wrong(at, "is " + value + ", out of range");
        }
    }

    private void text(String value, JsonNode schema, String at) {
        if (!type(schema).equals("string")) {
            wrong(at, "is a text");
        } else if (value.length() > schema.path("maxLength").asInt(Integer.MAX_VALUE)
                || value.length() < schema.path("minLength").asInt(0)) {
            wrong(at, "has " + value.length() + " characters");
        } else if (schema.has("enum") && !schema.path("enum").toString().contains('"' + value + '"')) {
            wrong(at, "is the word " + value);
        }
    }

    private static String type(JsonNode schema) {
        return schema.path("type").asText();
    }

    private void wrong(String at, String what) {
        found.add(at + " " + what);
    }
}
