package trestle.rendering;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import trestle.api.model.ApiWorking;
import trestle.batch.Row;
import trestle.binding.Json;
import trestle.endpoint.Calculation;
import trestle.endpoint.Worked;

/**
 * A request and what answers it. The answer is computed when it is asked for: a figure or a sheet
 * is drawn from the calculation's own records and needs none.
 *
 * @param calculation what is computed
 * @param request the generated request
 * @param options what the caller asked of the front door
 * @param <Q> generated request model
 * @param <A> generated answer model
 */
public record Answered<Q, A>(Calculation<Q, A> calculation, Q request, Options options) implements Row {

    /** The generated answer, computed anew at each call. */
    public A answer() {
        return calculation.answer(request);
    }

    /** The answer, with its workings where they are asked for. */
    @Override
    public Object whole() {
        return options.workings() ? tree() : answer();
    }

    /** The answer as the contract has it, with its numbers rounded. */
    @Override
    public JsonNode tree() {
        ObjectNode tree = Json.MAPPER.valueToTree(answer());
        if (options.workings()) {
            tree.set("workings", Json.MAPPER.valueToTree(workings()));
        }
        return tree;
    }

    @SuppressWarnings("unchecked") // a calculation that shows workings shows those of its own request
    private List<ApiWorking> workings() {
        return calculation instanceof Worked<?> worked ? ((Worked<Q>) worked).workings(request) : List.of();
    }
}
