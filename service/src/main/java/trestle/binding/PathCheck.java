package trestle.binding;

import java.util.Map;
import java.util.Optional;

/** Whether a path leads to a plain value of a model. */
public final class PathCheck {
    private PathCheck() {}

    /**
     * Why no object of a model has a plain value at a path; empty where one may have.
     *
     * @param path from the model
     * @param model a generated class
     * @param what the names along the path should be, as in "not a field here"
     * @return the reason in one clause
     */
    public static Optional<String> objection(FieldPath path, Class<?> model, String what) {
        Shape.Kind kind = new Shape.Nested(model);
        for (String step : path.steps()) {
            if (kind == Shape.Open.OBJECT) {
                return Optional.empty();
            }
            if (kind instanceof Shape.Nested nested) {
                if (!nested.model().isRecord()) {
                    return Optional.empty();
                }
                Map<String, Shape.Kind> fields = Shape.of(nested.model()).fields();
                if (!fields.containsKey(step)) {
                    return Optional.of(Nearest.to(step, fields.keySet(), what));
                }
                kind = fields.get(step);
            } else if (kind instanceof Shape.Listed listed) {
                if (!FieldPath.isIndex(step)) {
                    return Optional.of(Nearest.shortened(step) + " is no index of a list; they count from 0");
                }
                kind = listed.element();
            } else {
                return Optional.of("a value has no parts, and so no " + Nearest.shortened(step));
            }
        }
        return container(kind);
    }

    /**
     * Whether a path leads to a number that may have any value in between.
     *
     * @param path from the model
     * @param model a generated class
     * @return false for counts, words and all else
     */
    public static boolean isContinuous(FieldPath path, Class<?> model) {
        Shape.Kind kind = new Shape.Nested(model);
        for (String step : path.steps()) {
            if (kind instanceof Shape.Nested nested && nested.model().isRecord()) {
                kind = Shape.of(nested.model()).fields().get(step);
            } else if (kind instanceof Shape.Listed listed) {
                kind = listed.element();
            } else {
                return false;
            }
        }
        return kind == Shape.Plain.NUMBER;
    }

    private static Optional<String> container(Shape.Kind kind) {
        if (kind instanceof Shape.Listed) {
            return Optional.of("this is a list: name one value of it by its index");
        }
        if (kind instanceof Shape.Nested nested && nested.model().isRecord()) {
            String parts = String.join(", ", Shape.of(nested.model()).fields().keySet());
            return Optional.of("this is an object: name one of its values, " + parts);
        }
        return Optional.empty();
    }
}
