package trestle.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trestle.binding.Json;
import trestle.catalogue.Catalogue;
import trestle.endpoint.Calculation;
import trestle.endpoint.ReferenceTable;
import trestle.endpoint.Version;

/** The contract on board, and what is drawn from it: the index and the examples. */
public final class Documents {
    private static final String AS_JSON = "/trestle/api/openapi.json";
    private static final String AS_YAML = "/trestle/api/openapi.yaml";

    private final byte[] json = read(AS_JSON);
    private final byte[] yaml = read(AS_YAML);
    private final Map<String, byte[]> examples = new LinkedHashMap<>();
    private final byte[] index;

    /** Read once, by whoever asks first: the server need not wait for it to start. */
    private static final class OnBoard {
        static final Documents DOCUMENTS = new Documents();
    }

    private Documents() {
        JsonNode contract = parse(json);
        ObjectNode written = Json.MAPPER.createObjectNode();
        written.put("name", "Trestle");
        written.put("version", Version.current());
        ArrayNode calculations = written.putArray("calculations");
        for (Calculation<?, ?, ?, ?> calculation : Catalogue.calculations()) {
            JsonNode operation = contract.at("/paths").path(path(calculation)).path("post");
            JsonNode media = operation.at("/requestBody/content").path("application/json");
            examples.put(calculation.name(), Json.bytes(example(contract, media)));
            calculations.add(entry(calculation, operation, media));
        }
        ArrayNode tables = written.putArray("reference");
        Catalogue.tables().forEach(table -> tables.add(entry(table)));
        written.put("openapi", "/openapi.json");
        index = Json.bytes(written);
    }

    /**
     * The one there is.
     *
     * @return the documents
     */
    public static Documents onBoard() {
        return OnBoard.DOCUMENTS;
    }

    /**
     * The contract.
     *
     * @return JSON
     */
    public byte[] json() {
        return json.clone();
    }

    /**
     * The contract.
     *
     * @return YAML
     */
    public byte[] yaml() {
        return yaml.clone();
    }

    /**
     * What the service offers.
     *
     * @return JSON
     */
    public byte[] index() {
        return index.clone();
    }

    /**
     * The example request of a calculation.
     *
     * @param calculation its name
     * @return JSON, if there is such a calculation
     */
    public Optional<byte[]> example(String calculation) {
        return Optional.ofNullable(examples.get(calculation)).map(byte[]::clone);
    }

    private static String path(Calculation<?, ?, ?, ?> calculation) {
        return "/v1/" + calculation.name();
    }

    private static ObjectNode entry(Calculation<?, ?, ?, ?> calculation, JsonNode operation, JsonNode media) {
        ObjectNode entry = Json.MAPPER.createObjectNode();
        entry.put("name", calculation.name());
        entry.put("summary", operation.path("summary").asText());
        entry.put("href", path(calculation));
        entry.put("example", path(calculation) + "/example");
        entry.put("schema", "/openapi.json" + media.at("/schema/$ref").asText());
        return entry;
    }

    private static ObjectNode entry(ReferenceTable table) {
        ObjectNode entry = Json.MAPPER.createObjectNode();
        entry.put("name", table.name());
        entry.put("summary", table.summary());
        entry.put("href", "/v1/reference/" + table.name());
        return entry;
    }

    /** The first example of a request body; the bundler keeps examples as components. */
    private static JsonNode example(JsonNode contract, JsonNode media) {
        JsonNode example = media.path("examples").iterator().next();
        String reference = example.path("$ref").asText();
        JsonNode resolved = reference.isEmpty() ? example : contract.at(reference.substring(1));
        return resolved.path("value");
    }

    private static JsonNode parse(byte[] document) {
        try {
            return Json.MAPPER.readTree(document);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static byte[] read(String resource) {
        try (InputStream in = Documents.class.getResourceAsStream(resource)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
