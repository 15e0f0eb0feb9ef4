package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Random;
import trestle.binding.Json;

/** Requests drawn from the contract itself: any field, any value that its range allows. */
final class RandomRequest {
    private static final int LONGEST_LIST = 4;
    private static final double OPTIONAL_SHARE = 0.5;

    /** Values drawn anew in one request, on average. */
    private static final double CHANGES = 3;

    private static final double EXAMPLE_SHARE = 0.6;
    private static final double END_SHARE = 0.15;

    private final JsonNode contract;
    private final Random random;
    private double changedShare;

    RandomRequest(JsonNode contract, long seed) {
        this.contract = contract;
        this.random = new Random(seed);
    }

    /** A request of a calculation that fits the contract field by field. */
    ObjectNode of(String calculation) {
        return (ObjectNode) value(body(calculation), "request");
    }

    private JsonNode body(String calculation) {
        return contract.at("/paths")
                .path("/v1/" + calculation)
                .at("/post/requestBody/content")
                .path("application/json")
                .path("schema");
    }

    private static int leaves(JsonNode node) {
        int leaves = node.isContainerNode() ? 0 : 1;
        for (JsonNode child : node) {
            leaves += leaves(child);
        }
        return leaves;
    }

    private static boolean required(JsonNode schema, String property) {
        boolean required = false;
        for (JsonNode name : schema.path("required")) {
            required |= name.asText().equals(property);
        }
        return required;
    }

    /**
     * The example of a calculation with some of its values drawn anew, some fields gone, some
     * added.
     */
    ObjectNode near(String calculation, JsonNode example) {
        changedShare = CHANGES / leaves(example);
        return (ObjectNode) near(body(calculation), example, "request");
    }

    private JsonNode near(JsonNode given, JsonNode example, String name) {
        JsonNode schema = resolve(given);
        if (schema.has("allOf")) {
            return near(schema.path("allOf").get(0), example, name);
        }
        if (example instanceof ObjectNode && schema.path("additionalProperties").asBoolean(false)) {
            return example.deepCopy();
        }
        if (example instanceof ObjectNode object) {
            return nearObject(schema, object);
        }
        if (example instanceof ArrayNode list) {
            ArrayNode copy = Json.MAPPER.createArrayNode();
            list.forEach(element -> copy.add(near(schema.path("items"), element, name)));
            return copy;
        }
        return random.nextDouble() < changedShare ? value(schema, name) : example;
    }

    private ObjectNode nearObject(JsonNode schema, ObjectNode example) {
        ObjectNode copy = Json.MAPPER.createObjectNode();
        for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
            JsonNode kept = example.path(property.getKey());
            boolean changed = random.nextDouble() < changedShare;
            if (!kept.isMissingNode() && (!changed || required(schema, property.getKey()))) {
                copy.set(property.getKey(), near(property.getValue(), kept, property.getKey()));
            } else if (kept.isMissingNode() && changed) {
                copy.set(property.getKey(), value(property.getValue(), property.getKey()));
            }
        }
        return copy;
    }

    private JsonNode value(JsonNode given, String name) {
        JsonNode schema = resolve(given);
        if (schema.has("allOf")) {
            return value(schema.path("allOf").get(0), name);
        }
        if (schema.has("enum")) {
            JsonNode words = schema.path("enum");
            return words.get(random.nextInt(words.size()));
        }
        return switch (schema.path("type").asText()) {
            case "object" -> object(schema);
            case "array" -> list(schema, name);
            case "number" -> Json.MAPPER.getNodeFactory().numberNode(number(schema));
            case "integer" -> Json.MAPPER.getNodeFactory().numberNode((int) Math.round(number(schema)));
            case "boolean" -> Json.MAPPER.getNodeFactory().booleanNode(random.nextBoolean());
            default -> text(schema);
        };
    }

    private ObjectNode object(JsonNode schema) {
        if (schema.path("additionalProperties").asBoolean(false)) {
            return schema.path("example").deepCopy();
        }
        ObjectNode object = Json.MAPPER.createObjectNode();
        for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
            if (required(schema, property.getKey()) || random.nextDouble() < OPTIONAL_SHARE) {
                object.set(property.getKey(), value(property.getValue(), property.getKey()));
            }
        }
        return object;
    }

    private ArrayNode list(JsonNode schema, String name) {
        ArrayNode list = Json.MAPPER.createArrayNode();
        int least = schema.path("minItems").asInt(0);
        int most = Math.min(schema.path("maxItems").asInt(LONGEST_LIST), least + LONGEST_LIST);
        int size = least + random.nextInt(most - least + 1);
        for (int i = 0; i < size; i++) {
            list.add(value(schema.path("items"), name));
        }
        return list;
    }

    /** Mostly near the example, often anywhere, sometimes at an end of the range. */
    private double number(JsonNode schema) {
        double least = schema.path("minimum").asDouble();
        double greatest = schema.path("maximum").asDouble();
        double draw = random.nextDouble();
        double value;
        if (draw < EXAMPLE_SHARE) {
            value = schema.path("example").asDouble() * Math.exp(random.nextGaussian() * 0.5);
        } else if (draw < EXAMPLE_SHARE + END_SHARE) {
            value = random.nextBoolean() ? least : greatest;
        } else {
            value = least + (greatest - least) * Math.pow(random.nextDouble(), 3);
        }
        value = Math.max(least, Math.min(greatest, value));
        boolean open = schema.path("exclusiveMinimum").asBoolean();
        return open && value <= least ? least + Math.ulp(1.0) * 1e6 : value;
    }

    private JsonNode text(JsonNode schema) {
        String example = schema.path("example").asText("x");
        String odd = "=1+1 <b>&\"'\u202e\uD83D\uDE80 " + "y".repeat(200);
        String text = random.nextInt(5) == 0 && !schema.has("pattern") ? odd : example;
        int most = schema.path("maxLength").asInt(80);
        return Json.MAPPER.getNodeFactory().textNode(text.length() <= most ? text : text.substring(0, most));
    }

    private JsonNode resolve(JsonNode node) {
        return node.has("$ref") ? contract.at(node.path("$ref").asText().substring(1)) : node;
    }
}
