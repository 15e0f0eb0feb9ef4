package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import trestle.api.model.ApiStudyScale;
import trestle.api.model.ApiTradeFactor;
import trestle.binding.FieldPath;
import trestle.endpoint.Reading;

/**
 * A field of a plan, and its values.
 *
 * @param path the field
 * @param given the values, the words, or the ends
 */
record Factor(FieldPath path, ApiTradeFactor given) {

    JsonPointer pointer() {
        return JsonPointer.compile(path.pointer());
    }

    /** How many values it takes. */
    int count() {
        if (given.values() != null) {
            return given.values().size();
        }
        return given.words() != null ? given.words().size() : given.steps();
    }

    boolean numeric() {
        return given.words() == null;
    }

    JsonNode value(int index) {
        if (given.values() != null) {
            return DoubleNode.valueOf(given.values().get(index));
        }
        if (given.words() != null) {
            return TextNode.valueOf(given.words().get(index));
        }
        double share = (double) index / (given.steps() - 1);
        boolean log = Reading.or(given.scale(), ApiTradeFactor.SCALE) == ApiStudyScale.LOG;
        return DoubleNode.valueOf(
                log
                        ? given.from() * Math.pow(given.to() / given.from(), share)
                        : given.from() + share * (given.to() - given.from()));
    }

    /**
     * Reads the values that a factor has, in one of three ways.
     *
     * @param given of the request
     * @param at its JSON Pointer
     * @param reading notes contradictions
     */
    static void check(ApiTradeFactor given, String at, Reading reading) {
        reading.exactlyOne(at, List.of("values", "words", "from"), given.values(), given.words(), given.from());
        if (given.from() == null) {
            reading.takesNo("a factor without from", at, "to", given.to());
            reading.takesNo("a factor without from", at, "steps", given.steps());
            return;
        }
        boolean whole = reading.needs("a factor with from", at, "to", given.to())
                & reading.needs("a factor with from", at, "steps", given.steps());
        boolean log = Reading.or(given.scale(), ApiTradeFactor.SCALE) == ApiStudyScale.LOG;
        if (whole && log && (given.from() <= 0 || given.to() <= 0)) {
            reading.fault(ApiTradeFactor.SCALE.at(at), "contradiction", "even ratios need both ends above 0");
        }
    }
}
