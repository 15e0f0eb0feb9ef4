package trestle.study;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import trestle.binding.FieldPath;
import trestle.binding.PathCheck;

/** The numbers of a request that can be moved a little: not counts, which are whole. */
final class Numbers {
    /** More are not looked at; a list of a thousand items has no one number that matters. */
    private static final int MOST = 500;

    private Numbers() {}

    static List<FieldPath> of(Studied<?, ?, ?> studied) {
        List<FieldPath> found = new ArrayList<>();
        gather(studied.base(), List.of(), found);
        return found.stream()
                .filter(path ->
                        PathCheck.isContinuous(path, studied.calculation().requestType()))
                .limit(MOST)
                .toList();
    }

    private static void gather(JsonNode node, List<String> steps, List<FieldPath> found) {
        if (node.isNumber()) {
            found.add(new FieldPath(steps));
        } else if (node.isObject()) {
            node.properties().forEach(field -> gather(field.getValue(), with(steps, field.getKey()), found));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                gather(node.get(i), with(steps, String.valueOf(i)), found);
            }
        }
    }

    private static List<String> with(List<String> steps, String step) {
        List<String> longer = new ArrayList<>(steps);
        longer.add(step);
        return longer;
    }
}
