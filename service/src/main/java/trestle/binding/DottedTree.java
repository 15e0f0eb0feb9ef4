package trestle.binding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Grows the tree of a request from dotted names, as a query or a row of a table has them. Every
 * leaf is text. What hangs under indices from 0 is a list, all else is an object. A list with a gap
 * or a value that is also a branch is noted and left out.
 */
final class DottedTree {
    /** As deep as a body may nest. */
    private static final int MOST_STEPS = 32;

    private final Branch root = new Branch(new LinkedHashMap<>());
    private final Faults faults;

    private sealed interface Node {}

    private record Leaf(String text) implements Node {}

    private record Branch(Map<String, Node> parts) implements Node {}

    private DottedTree(Faults faults) {
        this.faults = faults;
    }

    static ObjectNode of(List<DottedField> fields, Faults faults) {
        DottedTree tree = new DottedTree(faults);
        fields.forEach(f -> tree.grow(FieldPath.ofDotted(f.name()), f.value()));
        return tree.object(tree.root, "");
    }

    private void grow(FieldPath path, String value) {
        List<String> steps = path.steps();
        if (steps.size() > MOST_STEPS || steps.contains("")) {
            faults.add(path.pointer(), "not_a_name", notAName(path));
            return;
        }
        Branch branch = root;
        int last = steps.size() - 1;
        for (int i = 0; i < last; i++) {
            Node next = branch.parts.computeIfAbsent(steps.get(i), s -> new Branch(new LinkedHashMap<>()));
            if (!(next instanceof Branch deeper)) {
                conflict(new FieldPath(steps.subList(0, i + 1)));
                return;
            }
            branch = deeper;
        }
        Node there = branch.parts.putIfAbsent(steps.get(last), new Leaf(value));
        if (there instanceof Branch) {
            conflict(path);
        } else if (there != null) {
            String name = Nearest.shortened(path.dotted());
            faults.add(path.pointer(), "repeated", name + " is given more than once");
        }
    }

    private void conflict(FieldPath path) {
        String name = Nearest.shortened(path.dotted());
        faults.add(path.pointer(), "conflict", name + " is given both a value and parts of its own");
    }

    private static String notAName(FieldPath path) {
        String name = Nearest.shortened(path.dotted());
        return path.steps().size() > MOST_STEPS
                ? name + " has more than " + MOST_STEPS + " parts"
                : name + " has an empty part: write names like wing.panels.0.span_mm";
    }

    private ObjectNode object(Branch branch, String at) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        branch.parts.forEach((name, node) ->
                written(node, at + "/" + FieldPath.escaped(name)).ifPresent(value -> object.set(name, value)));
        return object;
    }

    private Optional<JsonNode> written(Node node, String at) {
        if (node instanceof Leaf leaf) {
            return Optional.of(TextNode.valueOf(leaf.text));
        }
        Branch branch = (Branch) node;
        if (!branch.parts.keySet().stream().allMatch(FieldPath::isIndex)) {
            return Optional.of(object(branch, at));
        }
        return list(branch, at);
    }

    private Optional<JsonNode> list(Branch branch, String at) {
        int size = branch.parts.size();
        Optional<Integer> gap = IntStream.range(0, size)
                .filter(i -> !branch.parts.containsKey(Integer.toString(i)))
                .boxed()
                .findFirst();
        if (gap.isPresent()) {
            faults.add(at + "/" + gap.get(), "index_gap", gap(FieldPath.ofPointer(at), gap.get()));
            return Optional.empty();
        }
        var list = JsonNodeFactory.instance.arrayNode(size);
        for (int i = 0; i < size; i++) {
            written(branch.parts.get(Integer.toString(i)), at + "/" + i).ifPresentOrElse(list::add, list::addNull);
        }
        return Optional.of(list);
    }

    private static String gap(FieldPath list, int index) {
        return list.dotted() + "." + index + " is not given but a later one is: count from 0 without a gap";
    }
}
