package trestle.rendering;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import trestle.batch.Csv;
import trestle.batch.Row;
import trestle.binding.Json;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.finding.Caution;

/**
 * A request that was read and worked once; each representation is drawn from that.
 *
 * @param calculation what was computed
 * @param request the request as it came, without estimates
 * @param done the request with its work
 * @param options what the caller asked for
 * @param <Q> generated request model
 * @param <R> what is read of a request
 * @param <W> what is worked out of it
 * @param <A> generated answer model
 */
public record Answered<Q, R, W, A>(Calculation<Q, R, W, A> calculation, Q request, Done<Q, R, W> done, Options options)
        implements Row {

    /**
     * Reads and works a request.
     *
     * @param calculation what is computed
     * @param request the generated request
     * @param options what the caller asked for
     * @param <Q> generated request model
     * @param <R> what is read of a request
     * @param <W> what is worked out of it
     * @param <A> generated answer model
     * @return the request with its work
     */
    public static <Q, R, W, A> Answered<Q, R, W, A> of(
            Calculation<Q, R, W, A> calculation, Q request, Options options) {
        return new Answered<>(calculation, request, calculation.done(request, options.certainty()), options);
    }

    /** The answer, with its workings where they are asked for. */
    @Override
    public Object whole() {
        return options.workings() ? tree() : calculation.answer(done);
    }

    /** The answer as the contract has it, with its numbers rounded. */
    @Override
    public JsonNode tree() {
        ObjectNode tree = Json.MAPPER.valueToTree(calculation.answer(done));
        if (options.workings()) {
            tree.set("workings", Json.MAPPER.valueToTree(calculation.workings(done)));
        }
        return tree;
    }

    /** What stands above a table of the answer: its cautions where they are asked for, else nothing. */
    String comments() {
        if (!options.cautions()) {
            return "";
        }
        StringBuilder comments = new StringBuilder(Csv.comment(Caution.AID));
        tree().path("cautions").forEach(caution -> comments.append(Csv.comment(caution.asText())));
        return comments.toString();
    }

    /** The answer as a picture. */
    String figure() {
        return calculation.figure(done, options.theme());
    }

    /** A part of the answer as a picture; empty where this answer lacks the part. */
    Optional<String> figure(String pointer) {
        return calculation.figure(done, pointer, options.theme());
    }

    /** The answer as a sheet to print with what was asked, of a calculation that has one. */
    String sheet() {
        return calculation
                .sheet()
                .orElseThrow()
                .apply(done, Json.MAPPER.valueToTree(request).toString());
    }
}
