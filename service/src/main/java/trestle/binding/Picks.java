package trestle.binding;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiFault;

/** Takes the values out of an answer that a caller asked for by pointer. */
public final class Picks {
    private static final String NOTHING_TO_PICK = "nothing_to_pick";
    private static final String NOTHING_THERE = "this answer has no value there";

    private final List<FieldPath> paths;
    private final List<JsonPointer> pointers;

    /**
     * Picks to take.
     *
     * @param paths into an answer, in the order in which the values are wanted
     */
    public Picks(List<FieldPath> paths) {
        this.paths = List.copyOf(paths);
        pointers =
                paths.stream().map(path -> JsonPointer.compile(path.pointer())).toList();
    }

    /**
     * Refuses picks that no answer of a model can have a value for, before any work is done.
     *
     * @param paths the picks
     * @param answer the generated class of the answer
     * @throws Refusal with a fault for each such pick
     */
    public static void requirePossible(List<FieldPath> paths, Class<?> answer) {
        Faults faults = new Faults();
        for (FieldPath path : paths) {
            PathCheck.objection(path, answer, "in the answer")
                    .ifPresent(because -> faults.add(path.pointer(), NOTHING_TO_PICK, because));
        }
        faults.refuseIfAny(Reason.IMPOSSIBLE);
    }

    /**
     * The refusal of a pick that an answer has nothing for.
     *
     * @param pointer the pick
     * @return to be thrown
     */
    public static Refusal nothingAt(String pointer) {
        ApiFault fault = new ApiFault(pointer, NOTHING_TO_PICK, NOTHING_THERE);
        return new Refusal(Reason.IMPOSSIBLE, List.of(fault));
    }

    /**
     * All values.
     *
     * @param answer as a tree
     * @return a value for each pick, in their order
     * @throws Refusal if this answer lacks one
     */
    public List<JsonNode> from(JsonNode answer) {
        List<Optional<JsonNode>> values = whereThere(answer);
        Faults faults = new Faults();
        for (int i = 0; i < values.size(); i++) {
            if (values.get(i).isEmpty()) {
                faults.add(paths.get(i).pointer(), NOTHING_TO_PICK, NOTHING_THERE);
            }
        }
        faults.refuseIfAny(Reason.IMPOSSIBLE);
        return values.stream().flatMap(Optional::stream).toList();
    }

    /**
     * The values that this answer has.
     *
     * @param answer as a tree
     * @return for each pick, in their order, its value or none
     */
    public List<Optional<JsonNode>> whereThere(JsonNode answer) {
        return pointers.stream().map(answer::at).map(Picks::plain).toList();
    }

    private static Optional<JsonNode> plain(JsonNode node) {
        return node.isValueNode() && !node.isNull() ? Optional.of(node) : Optional.empty();
    }
}
