package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One end of what a field of a request may be: of its range, its size, or a word of its words.
 *
 * @param at JSON Pointer of the field
 * @param name which end
 * @param value what stands there
 */
public record End(String at, String name, JsonNode value) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** No arithmetic is meant for it, and a range that holds it lets it in. An open range has no least number. */
    private static final double TINY = 1e-320;

    private static final double HUGE = 1e308;

    /** Every end of every field of a request, of the optional fields that it lacks too. */
    public static List<End> of(JsonNode request, JsonNode schema) {
        List<End> ends = new ArrayList<>();
        gather(request, schema, "", ends);
        return ends;
    }

    /** Field and end, whichever entry of a list it stands in. */
    public String key() {
        return field() + " " + name;
    }

    /** The field, whichever entry of a list it stands in. */
    public String field() {
        return at.replaceAll("/[0-9]+(?=/|$)", "/{}");
    }

    private static void gather(JsonNode value, JsonNode schema, String at, List<End> ends) {
        JsonNode known = Contract.resolved(schema);
        if (Contract.isOpen(known)) {
            return;
        }
        if (known.has("items")) {
            list(value, known, at, ends);
        } else if (known.has("properties") || known.has("allOf")) {
            Contract.properties(known).forEach((name, field) -> gather(value.path(name), field, at + "/" + name, ends));
        } else if (known.has("enum")) {
            known.path("enum").forEach(word -> ends.add(new End(at, word.asText(), word)));
        } else {
            plain(known, at, ends);
        }
    }

    private static void list(JsonNode value, JsonNode schema, String at, List<End> ends) {
        JsonNode entries = value.isEmpty() ? Trees.least(schema) : value;
        int least = schema.path("minItems").asInt(0);
        ends.add(new End(at, "shortest", Trees.stretched(entries, schema, least)));
        ends.add(new End(
                at,
                "longest",
                Trees.stretched(entries, schema, schema.path("maxItems").asInt(least))));
        Set<List<String>> kinds = new HashSet<>();
        for (int i = 0; i < entries.size(); i++) {
            List<String> kind = new ArrayList<>();
            entries.get(i).fieldNames().forEachRemaining(kind::add);
            if (kinds.add(kind)) {
                gather(
                        value.isEmpty() ? MissingNode.getInstance() : value.get(i),
                        schema.path("items"),
                        at + "/" + i,
                        ends);
            }
        }
    }

    private static void plain(JsonNode schema, String at, List<End> ends) {
        switch (schema.path("type").asText()) {
            case "number" -> numbers(schema, at, ends);
            case "integer" -> {
                ends.add(new End(
                        at, "least", NODES.numberNode(schema.path("minimum").asInt(Integer.MIN_VALUE))));
                ends.add(new End(
                        at, "most", NODES.numberNode(schema.path("maximum").asInt(Integer.MAX_VALUE))));
            }
            case "boolean" -> {
                ends.add(new End(at, "true", NODES.booleanNode(true)));
                ends.add(new End(at, "false", NODES.booleanNode(false)));
            }
            default -> {
                if (schema.has("pattern")) {
                    ends.add(new End(at, "example", schema.path("example")));
                    return;
                }
                ends.add(new End(at, "shortest", text(schema.path("minLength").asInt(0))));
                ends.add(new End(at, "longest", text(schema.path("maxLength").asInt(1000))));
            }
        }
    }

    private static void numbers(JsonNode schema, String at, List<End> ends) {
        double least = schema.path("minimum").asDouble(-HUGE);
        double most = schema.path("maximum").asDouble(HUGE);
        boolean open = schema.path("exclusiveMinimum").asBoolean();
        if (!open) {
            ends.add(new End(at, "least", NODES.numberNode(least)));
        }
        ends.add(new End(at, "most", NODES.numberNode(most)));
        if (!open && least < TINY && most > TINY) {
            ends.add(new End(at, "tiny", NODES.numberNode(TINY)));
        }
    }

    private static JsonNode text(int length) {
        return NODES.textNode("<b>&\"'=,;\u202e".repeat(length / 8 + 1).substring(0, length));
    }
}
