package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trestle.api.model.ApiFault;
import trestle.binding.Binder;
import trestle.binding.FieldPath;
import trestle.binding.Json;
import trestle.binding.Reason;
import trestle.binding.Refusal;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.Done;
import trestle.endpoint.DrawnWork;
import trestle.estimate.Draw;

/**
 * A calculation with the request that a study asks it again and again.
 *
 * @param calculation what is studied
 * @param base its request
 * @param picks the figures of its answer that are wanted
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 */
record Studied<Q, R, W>(Calculation<Q, R, W, ?> calculation, ObjectNode base, List<FieldPath> picks) {

    /** What one run gave. */
    record Ran(JsonNode answer, Set<String> stops) {
        OptionalDouble number(FieldPath pick) {
            JsonNode value = answer.at(pick.pointer());
            return value.isNumber() ? OptionalDouble.of(value.doubleValue()) : OptionalDouble.empty();
        }
    }

    /**
     * The answer at other values.
     *
     * @param values by pointer into the request
     * @return the answer as a tree
     * @throws Refusal where the calculation refuses its request
     */
    JsonNode answer(Map<JsonPointer, JsonNode> values) {
        try {
            return tree(calculation, calculation.done(request(values), certainty()));
        } catch (RuntimeException failure) {
            throw Refusal.behind(failure).orElseThrow(() -> failure);
        }
    }

    /**
     * The answer at other values, and at one draw of all that the calculation estimates.
     *
     * @param values by pointer into the request
     * @param draw of what is estimated
     * @return the answer, and what forbids it
     * @throws Refusal where the calculation refuses its request
     */
    Ran drawn(Map<JsonPointer, JsonNode> values, Draw draw) {
        try {
            Done<Q, R, W> done = DrawnWork.of(calculation, request(values), draw);
            return new Ran(tree(calculation, done), calculation.stops(done.work()));
        } catch (RuntimeException failure) {
            throw Refusal.behind(failure).orElseThrow(() -> failure);
        }
    }

    /** Names of what the calculation estimates of its base request by itself. */
    List<String> unknowns() {
        return DrawnWork.unknowns(calculation, request(Map.of()));
    }

    private Q request(Map<JsonPointer, JsonNode> values) {
        ObjectNode request = base.deepCopy();
        values.forEach((at, value) -> put(request, at, value));
        return Binder.bindEither(request, calculation.requestType());
    }

    private static <Q, R, W, A> JsonNode tree(Calculation<Q, R, W, A> calculation, Done<Q, R, W> done) {
        return Json.MAPPER.valueToTree(calculation.answer(done));
    }

    /** Bands cost the sample of each point: only where they are asked for. */
    private Certainty certainty() {
        return banded() ? Certainty.FULL : Certainty.ESTIMATED;
    }

    /** Whether a figure with a band is wanted. */
    boolean banded() {
        return picks.stream()
                .anyMatch(pick -> !pick.steps().isEmpty() && pick.steps().get(0).equals("bands"));
    }

    /** Puts a value in; what holds it is made where the request lacks it. */
    private static void put(ObjectNode request, JsonPointer at, JsonNode value) {
        JsonNode owner = request;
        for (JsonPointer step = at; !step.tail().matches(); step = step.tail()) {
            JsonNode next = child(owner, step);
            if (next.isMissingNode() || next.isNull()) {
                if (!(owner instanceof ObjectNode object)) {
                    throw noPlace(at);
                }
                next = object.putObject(step.getMatchingProperty());
            }
            owner = next;
        }
        JsonPointer last = at.last();
        if (owner instanceof ObjectNode object) {
            object.set(last.getMatchingProperty(), value);
        } else if (owner instanceof ArrayNode list
                && last.getMatchingIndex() >= 0
                && last.getMatchingIndex() < list.size()) {
            list.set(last.getMatchingIndex(), value);
        } else {
            throw noPlace(at);
        }
    }

    private static JsonNode child(JsonNode owner, JsonPointer step) {
        return owner.isArray() ? owner.path(step.getMatchingIndex()) : owner.path(step.getMatchingProperty());
    }

    private static Refusal noPlace(JsonPointer at) {
        return new Refusal(
                Reason.IMPOSSIBLE,
                List.of(new ApiFault(at.toString(), "no_such_place", "the base has no entry there")));
    }

    /** The number that stands at a place of the base; empty where none does. */
    Optional<Double> number(FieldPath at) {
        JsonNode value = base.at(at.pointer());
        return value.isNumber() ? Optional.of(value.doubleValue()) : Optional.empty();
    }
}
