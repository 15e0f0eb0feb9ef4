package trestle.http;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;

/** Takes the values out of an answer that a caller asked for by pointer. */
final class Picks {
    private static final String NOTHING_TO_PICK = "nothing_to_pick";
    private static final String NOTHING_THERE = "this answer has no value there";

    private final List<FieldPath> paths;
    private final List<JsonPointer> pointers;

    Picks(List<FieldPath> paths) {
        this.paths = List.copyOf(paths);
        pointers =
                paths.stream().map(path -> JsonPointer.compile(path.pointer())).toList();
    }

    /** Refuses a pick that no answer of a model can have a value for, before any work is done. */
    static void requirePossible(List<FieldPath> paths, Class<?> answer) {
        Faults faults = new Faults();
        for (FieldPath path : paths) {
            PathCheck.objection(path, answer, "in the answer")
                    .ifPresent(because -> faults.add(path.pointer(), NOTHING_TO_PICK, because));
        }
        faults.refuseIfAny(Problems.Kind.IMPOSSIBLE_REQUEST);
    }

    /** The refusal of a pick that this answer has nothing for. */
    static Refusal nothingAt(String pointer) {
        ApiFault fault = new ApiFault(pointer, NOTHING_TO_PICK, NOTHING_THERE);
        return new Refusal(Problems.Kind.IMPOSSIBLE_REQUEST, List.of(fault));
    }

    /** All values; refuses if this answer lacks one. */
    List<JsonNode> from(JsonNode answer) {
        List<Optional<JsonNode>> values = whereThere(answer);
        Faults faults = new Faults();
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).isEmpty()) {
                faults.add(paths.get(i).pointer(), NOTHING_TO_PICK, NOTHING_THERE);
            }
        }
        faults.refuseIfAny(Problems.Kind.IMPOSSIBLE_REQUEST);
        return values.stream().flatMap(Optional::stream).toList();
    }

    /** The values, those that this answer has. */
    List<Optional<JsonNode>> whereThere(JsonNode answer) {
        return pointers.stream().map(answer::at).map(Picks::plain).toList();
    }

    private static Optional<JsonNode> plain(JsonNode node) {
        return node.isValueNode() && !node.isNull() ? Optional.of(node) : Optional.empty();
    }
}
