package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Requests made and changed by the contract. */
public final class Trees {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Trees() {}

    /** The least value of a schema: what is required, with the contract's examples. */
    static JsonNode least(JsonNode schema) {
        JsonNode known = Contract.resolved(schema);
        if (known.has("items")) {
            ArrayNode list = NODES.arrayNode();
            for (int i = 0; i < Math.max(1, known.path("minItems").asInt()); i++) {
                JsonNode example = known.path("example").path(i);
                list.add(example.isObject() || example.isNumber() ? example.deepCopy() : least(known.path("items")));
            }
            return list;
        }
        if (!known.has("properties") && known.has("example")) {
            return known.path("example").deepCopy();
        }
        ObjectNode object = NODES.objectNode();
        Map<String, JsonNode> properties = Contract.properties(known);
        Contract.required(known).forEach(name -> object.set(name, least(properties.get(name))));
        return object;
    }

    /** A copy of a request with a value at a place; what is missing on the way there is made. */
    public static ObjectNode with(JsonNode request, JsonNode schema, String pointer, JsonNode value) {
        ObjectNode copy = request.deepCopy();
        JsonNode here = copy;
        String at = "";
        String[] steps = pointer.substring(1).split("/");
        for (int i = 0; i < steps.length - 1; i++) {
            at += "/" + steps[i];
            if (step(here, steps[i]) == null) {
                put(here, steps[i], least(Contract.at(schema, at)));
            }
            here = step(here, steps[i]);
        }
        put(here, steps[steps.length - 1], value);
        return copy;
    }

    /** A copy without a place, where the contract can do without it. */
    static ObjectNode without(JsonNode request, JsonNode schema, String pointer) {
        ObjectNode copy = request.deepCopy();
        int cut = pointer.lastIndexOf('/');
        String name = pointer.substring(cut + 1);
        boolean required = Contract.required(Contract.at(schema, pointer.substring(0, cut)))
                .contains(name);
        if (!required && copy.at(pointer.substring(0, cut)) instanceof ObjectNode owner) {
            owner.remove(name);
        }
        return copy;
    }

    /** A list of another length: between the given entries numbers rise evenly, the rest is repeated. */
    static ArrayNode stretched(JsonNode list, JsonNode schema, int size) {
        ArrayNode longer = NODES.arrayNode();
        for (int i = 0; i < size; i++) {
            double place = size == 1 ? 0 : (double) i * (list.size() - 1) / (size - 1);
            int before = (int) Math.floor(place);
            JsonNode next = list.get(Math.min(before + 1, list.size() - 1));
            longer.add(between(list.get(before), next, place - before, schema.path("items")));
        }
        return longer;
    }

    private static JsonNode between(JsonNode one, JsonNode other, double share, JsonNode schema) {
        JsonNode known = Contract.resolved(schema);
        if (one instanceof ObjectNode object) {
            ObjectNode copy = NODES.objectNode();
            Map<String, JsonNode> fields = Contract.properties(known);
            object.properties()
                    .forEach(field -> copy.set(
                            field.getKey(),
                            between(field.getValue(), other.path(field.getKey()), share, fields.get(field.getKey()))));
            return copy;
        }
        return known.path("type").asText().equals("number") && other.isNumber()
                ? NODES.numberNode(one.asDouble() + share * (other.asDouble() - one.asDouble()))
                : one.deepCopy();
    }

    private static JsonNode step(JsonNode owner, String name) {
        return owner instanceof ArrayNode list ? list.get(Integer.parseInt(name)) : owner.get(name);
    }

    private static void put(JsonNode owner, String name, JsonNode value) {
        if (owner instanceof ArrayNode list) {
            int index = Integer.parseInt(name);
            if (index < list.size()) {
                list.set(index, value);
            } else {
                list.add(value);
            }
        } else {
            ((ObjectNode) owner).set(name, value);
        }
    }
}
