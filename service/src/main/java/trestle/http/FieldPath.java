package trestle.http;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The way to a field through objects and lists. Queries and header rows write it with dots,
 * problems and picks as a JSON Pointer (RFC 6901).
 *
 * @param steps names of fields and indices of lists, outermost first
 */
record FieldPath(List<String> steps) {
    /** A list index as both ways of writing have it: no sign, no leading zero. */
    private static final String INDEX = "0|[1-9][0-9]{0,8}";

    /** Copies the list. */
    FieldPath {
        steps = List.copyOf(steps);
    }

    static FieldPath ofDotted(String name) {
        return new FieldPath(Arrays.asList(name.split("\\.", -1)));
    }

    /** Reads a pointer; the empty one is the whole. */
    static FieldPath ofPointer(String pointer) {
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

    String dotted() {
        return String.join(".", steps);
    }

    String pointer() {
        return steps.stream().map(s -> "/" + escaped(s)).collect(Collectors.joining());
    }

    /** A name as a JSON Pointer has it (RFC 6901, section 3). */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
