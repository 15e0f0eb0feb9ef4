package trestle.binding;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import trestle.api.model.ApiFault;

/** Turns bytes or text into a request that fits the contract, or refuses with every fault. */
public final class Binder {
    private Binder() {}

    /**
     * Binds a body of JSON.
     *
     * @param body UTF-8 text
     * @param model the generated class of the request
     * @return a request that keeps the contract
     * @throws Refusal with every fault there is
     */
    public static <Q> Q bind(byte[] body, Class<Q> model) {
        return bind(tree(body), model);
    }

    /**
     * Binds a JSON tree.
     *
     * @param tree used up by it
     * @param model the generated class of the request
     * @return a request that keeps the contract
     * @throws Refusal with every fault there is
     */
    public static <Q> Q bind(JsonNode tree, Class<Q> model) {
        if (!(tree instanceof ObjectNode object)) {
            throw new Refusal(
                    Reason.INVALID, List.of(new ApiFault("", "wrong_type", "the body must be a JSON object")));
        }
        return bind(object, Leaves.TYPED, model, new Faults());
    }

    /**
     * Binds a JSON tree whose numbers may stand as text, as a query that holds a request within a request has them.
     *
     * @param tree used up by it
     * @param model the generated class of the request
     * @return a request that keeps the contract
     * @throws Refusal with every fault there is
     */
    public static <Q> Q bindEither(ObjectNode tree, Class<Q> model) {
        return bind(tree, Leaves.EITHER, model, new Faults());
    }

    /**
     * Binds dotted names with values in text, as a query or a row of a table has them.
     *
     * @param fields in any order
     * @param model the generated class of the request
     * @return a request that keeps the contract
     * @throws Refusal with every fault there is
     */
    public static <Q> Q bind(List<DottedField> fields, Class<Q> model) {
        Faults faults = new Faults();
        return bind(DottedTree.of(fields, faults), Leaves.TEXT, model, faults);
    }

    private static <Q> Q bind(ObjectNode object, Leaves leaves, Class<Q> model, Faults faults) {
        StructureCheck structure = new StructureCheck(faults, leaves);
        structure.object(object, model, "");
        Q request = bindChecked(object, model);
        Constraints.check(request, structure.cutLists(), faults);
        faults.refuseIfAny(Reason.INVALID);
        return request;
    }

    private static JsonNode tree(byte[] body) {
        try {
            JsonNode tree = Json.MAPPER.readTree(body);
            if (tree == null || tree instanceof MissingNode) {
                throw new Refusal(Reason.UNREADABLE, "the body is empty");
            }
            return tree;
        } catch (JsonProcessingException malformed) {
            throw new Refusal(Reason.UNREADABLE, ParserWords.plain(malformed));
        } catch (IOException unreadable) {
            throw new Refusal(Reason.UNREADABLE, "the body is not UTF-8 text");
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
