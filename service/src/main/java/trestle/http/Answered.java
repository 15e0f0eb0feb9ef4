package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import trestle.api.model.Working;
import trestle.endpoint.Calculation;
import trestle.endpoint.Worked;

/**
 * A request with its answer, as what writes it down may need it.
 *
 * @param calculation what was computed
 * @param request the generated request
 * @param answer the generated answer
 * @param options what the caller asked of the front door
 * @param <Q> generated request model
 * @param <A> generated answer model
 */
record Answered<Q, A>(Calculation<Q, A> calculation, Q request, A answer, Options options) {

    static <Q, A> Answered<Q, A> of(Calculation<Q, A> calculation, Q request, Options options) {
        return new Answered<>(calculation, request, calculation.answer(request), options);
    }

    /** The answer as the contract has it, with its numbers rounded. */
    JsonNode tree() {
        ObjectNode tree = Json.MAPPER.valueToTree(answer);
        if (options.workings()) {
            tree.set("workings", Json.MAPPER.valueToTree(workings()));
        }
        return tree;
    }

    @SuppressWarnings(
            "unchecked") // a calculation that shows workings shows those of its own request
    private List<Working> workings() {
        return calculation instanceof Worked<?> worked
                ? ((Worked<Q>) worked).workings(request)
                : List.of();
    }
}
