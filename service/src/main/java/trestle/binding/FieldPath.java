package trestle.binding;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The way to a field through objects and lists. Queries and header rows write it with dots,
 * problems and picks as a JSON Pointer (RFC 6901).
 *
 * @param steps names of fields and indices of lists, outermost first
 */
public record FieldPath(List<String> steps) {
    /** A list index as both ways of writing have it: no sign, no leading zero. */
    private static final String INDEX = "0|[1-9][0-9]{0,8}";

    /** Copies the list. */
    public FieldPath {
        steps = List.copyOf(steps);
    }

    /**
     * Reads a dotted name.
     *
     * @param name such as {@code items.0.mass_g}
     * @return the way
     */
    public static FieldPath ofDotted(String name) {
        return new FieldPath(Arrays.asList(name.split("\\.", -1)));
    }

    /**
     * Reads a pointer.
     *
     * @param pointer such as {@code /items/0/mass_g}; the empty one is the whole
     * @return the way
     */
    public static FieldPath ofPointer(String pointer) {
        if (pointer.isEmpty()) {
            return new FieldPath(List.of());
        }
        return new FieldPath(Arrays.stream(pointer.substring(1).split("/", -1))
                .map(step -> step.replace("~1", "/").replace("~0", "~"))
                .toList());
    }

    static boolean isIndex(String step) {
        return step.matches(INDEX);
    }

    /**
     * The way with dots.
     *
     * @return such as {@code items.0.mass_g}
     */
    public String dotted() {
        return String.join(".", steps);
    }

    /**
     * The way as a JSON Pointer.
     *
     * @return such as {@code /items/0/mass_g}
     */
    public String pointer() {
        return steps.stream().map(s -> "/" + escaped(s)).collect(Collectors.joining());
    }

    /** A name as a JSON Pointer has it (RFC 6901, section 3). */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
