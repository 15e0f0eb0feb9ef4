package trestle.http;

import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The example request of a calculation with some fields changed.
 *
 * @param calculation name of the calculation
 * @param request the request
 */
record Variant(String calculation, JsonNode request) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static Variant of(String calculation) {
        return new Variant(calculation, LiveService.example(calculation));
    }

    /** A request of a test's own. */
    static Variant of(String calculation, String json) {
        return new Variant(calculation, tree(json));
    }

    /** With a field set to a number, a text, true or false, or a tree. */
    Variant with(String at, Object value) {
        return changed(at, MAPPER.valueToTree(value));
    }

    /** With a field set to what a JSON text says. */
    Variant withJson(String at, String json) {
        return changed(at, tree(json));
    }

    /** Without a field. */
    Variant without(String at) {
        return changed(at, null);
    }

    /** The response to a request that fits the contract. */
    ValidatableResponse post() {
        return LiveService.lawful()
                .body(request.toString())
                .post("/v1/" + calculation)
                .then();
    }

    /** The response in another representation. */
    ValidatableResponse as(String representation) {
        return LiveService.lawful()
                .body(request.toString())
                .post("/v1/" + calculation + "?as=" + representation)
                .then();
    }

    /** The response to a request that does not. */
    ValidatableResponse postUnlawful() {
        return LiveService.unlawful()
                .body(request.toString())
                .post("/v1/" + calculation)
                .then();
    }

    /** Demands that the contract refuses one field and no other, and says why. */
    void refusedOnlyAt(String place) {
        postUnlawful()
                .statusCode(400)
                .body("errors.at", equalTo(List.of(place)))
                .body("errors[0].message", not(emptyString()));
    }

    /** The answer, which has to be one. */
    JsonNode answer() {
        return tree(post().statusCode(200).extract().asString());
    }

    /** One number of the answer. */
    double number(String at) {
        JsonNode number = answer().at(at);
        if (!number.isNumber()) {
            throw new AssertionError("no number at " + at + " but " + number);
        }
        return number.asDouble();
    }

    /** The finding of a code at a place of the request, which has to be there. */
    static JsonNode finding(JsonNode answer, String code, String at) {
        for (JsonNode finding : answer.path("findings")) {
            if (finding.path("code").asText().equals(code)
                    && finding.path("at").asText().equals(at)) {
                return finding;
            }
        }
        throw new AssertionError("no " + code + " at " + at + " in " + answer.path("findings"));
    }

    private Variant changed(String at, JsonNode value) {
        JsonNode copy = request.deepCopy();
        JsonPointer pointer = JsonPointer.compile(at);
        JsonNode parent = copy.at(pointer.head());
        String last = pointer.last().getMatchingProperty();
        if (parent instanceof ArrayNode list) {
            list.set(pointer.last().getMatchingIndex(), value);
        } else if (value == null) {
            ((ObjectNode) parent).remove(last);
        } else {
            ((ObjectNode) parent).set(last, value);
        }
        return new Variant(calculation, copy);
    }

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
