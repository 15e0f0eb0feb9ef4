package trestle.http;

import com.fasterxml.jackson.databind.JsonNode;
import trestle.endpoint.Calculation;

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
        return Json.MAPPER.valueToTree(answer);
    }
}
