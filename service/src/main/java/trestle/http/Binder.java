package trestle.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import trestle.api.model.Fault;

/** Turns bytes into a request that fits the contract, or refuses with every fault. */
final class Binder {
    private Binder() {}

    static <Q> Q bind(byte[] body, Class<Q> model) {
        return bind(tree(body), model);
    }

    static <Q> Q bind(JsonNode tree, Class<Q> model) {
        if (!(tree instanceof ObjectNode object)) {
            throw new Refusal(
                    Problems.Kind.INVALID_REQUEST,
                    List.of(new Fault("", "wrong_type", "the body must be a JSON object")));
        }
        Faults faults = new Faults();
        new StructureCheck(faults).object(object, model, "");
        Q request = bindChecked(object, model);
        Constraints.check(request, faults);
        if (faults.any()) {
            throw new Refusal(Problems.Kind.INVALID_REQUEST, faults.list());
        }
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
            throw new Refusal(Problems.Kind.MALFORMED_BODY, plain(malformed));
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

    /** The parser's own words end where its talk of its settings begins. */
    private static String plain(JacksonException malformed) {
        JsonLocation at = malformed.getLocation();
        String said = malformed.getOriginalMessage().lines().findFirst().orElse("not JSON");
        String where =
                at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
        return where + said.replaceAll(" \\(.*", "");
    }
}
