package trestle.binding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What is known of an answer before it is worked out, by the class of its model. */
public final class AnswerShape {
    private static final Map<Class<?>, List<FieldPath>> COLUMNS = new ConcurrentHashMap<>();

    private AnswerShape() {}

    /**
     * The plain values of a model that stand in no list, in the order of the contract. A table has
     * a column for each, whether or not one answer has a value there, so that the columns of all
     * answers agree.
     *
     * @param model the generated class of an answer
     * @return the ways to the values
     */
    public static List<FieldPath> columns(Class<?> model) {
        List<FieldPath> known = COLUMNS.get(model);
        if (known == null) {
            known = read(model);
            COLUMNS.put(model, known);
        }
        return known;
    }

    /** Works the columns out, whether or not they are known already. */
    static List<FieldPath> read(Class<?> model) {
        List<FieldPath> columns = new ArrayList<>();
        collect(model, List.of(), List.of(), columns);
        return List.copyOf(columns);
    }

    private static void collect(Class<?> model, List<Class<?>> above, List<String> steps, List<FieldPath> columns) {
        if (!model.isRecord() || above.contains(model)) {
            return;
        }
        List<Class<?>> within = new ArrayList<>(above);
        within.add(model);
        Shape.of(model).fields().forEach((name, kind) -> {
            List<String> path = new ArrayList<>(steps);
            path.add(name);
            if (kind instanceof Shape.Nested nested) {
                collect(nested.model(), within, path, columns);
            } else if (!(kind instanceof Shape.Listed)) {
                columns.add(new FieldPath(path));
            }
        });
    }
}
