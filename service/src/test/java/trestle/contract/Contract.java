package trestle.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trestle.binding.Json;
import trestle.page.Documents;

/** The bundled OpenAPI document, walked by its schemas. */
public final class Contract {
    private static final JsonNode DOCUMENT = read();

    private Contract() {}

    /** The schema of a calculation's request. */
    public static JsonNode request(String calculation) {
        return body(operation(calculation).path("requestBody"));
    }

    /** The schema of a calculation's answer. */
    public static JsonNode answer(String calculation) {
        return body(operation(calculation).path("responses").path("200"));
    }

    /** The example request of a calculation. */
    public static JsonNode example(String calculation) {
        try {
            return Json.MAPPER.readTree(Documents.onBoard().example(calculation).orElseThrow());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The requests of the table of findings, each of which shows a branch of its calculation. */
    public static List<JsonNode> table(String calculation) {
        Path file = Path.of("src", "test", "resources", "findings", calculation + ".jsonl");
        try {
            List<JsonNode> requests = new ArrayList<>();
            for (String line : Files.exists(file) ? Files.readAllLines(file) : List.<String>of()) {
                requests.add(Json.MAPPER.readTree(line).path("request"));
            }
            return requests;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What a reference stands for; any other schema is itself. */
    public static JsonNode resolved(JsonNode schema) {
        JsonNode known = schema;
        while (known.has("$ref")) {
            known = DOCUMENT.at(known.path("$ref").asText().substring(1));
        }
        return known;
    }

    /** The fields of an object, those of its parts too. */
    public static Map<String, JsonNode> properties(JsonNode schema) {
        JsonNode known = resolved(schema);
        Map<String, JsonNode> properties = new LinkedHashMap<>();
        known.path("allOf").forEach(part -> properties.putAll(properties(part)));
        known.path("properties").properties().forEach(field -> properties.put(field.getKey(), field.getValue()));
        return properties;
    }

    /** The fields that an object cannot do without. */
    public static Set<String> required(JsonNode schema) {
        JsonNode known = resolved(schema);
        Set<String> required = new LinkedHashSet<>();
        known.path("allOf").forEach(part -> required.addAll(required(part)));
        known.path("required").forEach(name -> required.add(name.asText()));
        return required;
    }

    /** Whether an object may have fields that the contract does not name: a request within a request. */
    public static boolean isOpen(JsonNode schema) {
        JsonNode known = resolved(schema);
        return known.path("additionalProperties").asBoolean(false) && !known.has("properties");
    }

    /** Whether a value of a schema may have a place; an index fits any list. */
    public static boolean hasPlace(JsonNode schema, String pointer) {
        return !at(schema, pointer).isMissingNode();
    }

    /** The schema at a place of a value; missing where there is none. */
    public static JsonNode at(JsonNode schema, String pointer) {
        JsonNode known = resolved(schema);
        if (pointer.isEmpty()) {
            return known;
        }
        if (isOpen(known) && pointer.startsWith("/")) {
            return known;
        }
        if (!pointer.startsWith("/")) {
            return MissingNode.getInstance();
        }
        int cut = pointer.indexOf('/', 1);
        String step = pointer.substring(1, cut < 0 ? pointer.length() : cut)
                .replace("~1", "/")
                .replace("~0", "~");
        String rest = cut < 0 ? "" : pointer.substring(cut);
        JsonNode next = known.has("items")
                ? step.matches("0|[1-9][0-9]*") ? known.path("items") : MissingNode.getInstance()
                : properties(known).getOrDefault(step, MissingNode.getInstance());
        return next.isMissingNode() ? next : at(next, rest);
    }

    private static JsonNode operation(String calculation) {
        return DOCUMENT.path("paths").path("/v1/" + calculation).path("post");
    }

    private static JsonNode body(JsonNode holder) {
        JsonNode schema =
                resolved(holder).at("/content").path("application/json").path("schema");
        if (schema.isMissingNode()) {
            throw new IllegalStateException("no schema in " + holder);
        }
        return resolved(schema);
    }

    private static JsonNode read() {
        try (InputStream in = Contract.class.getResourceAsStream("/trestle/api/openapi.json")) {
            return Json.MAPPER.readTree(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
