package trestle.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import trestle.api.model.ApiFault;

/** Turns bytes or text into a request that fits the contract, or refuses with every fault. */
final class Binder {
    private Binder() {}

    static <Q> Q bind(byte[] body, Class<Q> model) {
        return bind(tree(body), model);
    }

    /** Binds a JSON tree, which is used up by it. */
    static <Q> Q bind(JsonNode tree, Class<Q> model) {
        if (!(tree instanceof ObjectNode object)) {
            throw new Refusal(
                    Problems.Kind.INVALID_REQUEST,
                    List.of(new ApiFault("", "wrong_type", "the body must be a JSON object")));
        }
        return bind(object, Leaves.TYPED, model, new Faults());
    }

    /** Binds dotted names with values in text, as a query or a row of a table has them. */
    static <Q> Q bind(List<Query.Parameter> fields, Class<Q> model) {
        Faults faults = new Faults();
        return bind(DottedTree.of(fields, faults), Leaves.TEXT, model, faults);
    }

    private static <Q> Q bind(ObjectNode object, Leaves leaves, Class<Q> model, Faults faults) {
        new StructureCheck(faults, leaves).object(object, model, "");
        Q request = bindChecked(object, model);
        Constraints.check(request, faults);
        faults.refuseIfAny(Problems.Kind.INVALID_REQUEST);
        return request;
    }

    private static JsonNode tree(byte[] body) {
        try {
            JsonNode tree = Json.MAPPER.readTree(body);
            if (tree == null || tree instanceof MissingNode) {
                throw new Refusal(Problems.Kind.MALFORMED_BODY, "the body is empty");
            }
            return tree;
        } catch (JsonProcessingException malformed) {
            throw new Refusal(Problems.Kind.MALFORMED_BODY, ParserWords.plain(malformed));
        } catch (IOException unreadable) {
            throw new Refusal(Problems.Kind.MALFORMED_BODY, "the body is not UTF-8 text");
        }
    }

    private static <Q> Q bindChecked(ObjectNode object, Class<Q> model) {
        try {
            return Json.MAPPER.treeToValue(object, model);
        } catch (JsonProcessingException unbound) {
            throw new IllegalStateException("a checked tree did not bind", unbound);
        }
    }
}
