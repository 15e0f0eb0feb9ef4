package trestle.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.figure.Theme;

/**
 * What a caller asks of the front door, beside the fields of the calculation.
 *
 * @param as the representation, for callers that cannot set a header
 * @param picks the values wanted instead of the whole answer
 * @param theme how drawings are coloured
 * @param workings whether the answer should say how it was reached
 */
record Options(Optional<Form> as, List<FieldPath> picks, Theme theme, boolean workings) {
    private static final String INLINE = "inline";

    /** The representations that the contract knows; a calculation need not offer all of them. */
    enum Form {
        JSON,
        CSV,
        TEXT,
        SVG,
        HTML
    }

    /** On or off. */
    private enum Switch {
        TRUE,
        FALSE
    }

    /** Copies the list. */
    Options {
        picks = List.copyOf(picks);
    }

    static Options of(Query query) {
        Faults faults = new Faults();
        Optional<Form> as = word(query, "as", Form.class, faults);
        Optional<Theme> theme = word(query, "theme", Theme.class, faults);
        List<FieldPath> picks = picks(query, faults);
        for (String errors : values(query, "errors")) {
            if (!errors.equals(INLINE)) {
                unknown("errors", errors, INLINE, faults);
            } else if (picks.isEmpty()) {
                faults.add("/errors", "contradiction", "errors=inline goes with pick only");
            }
        }
        Optional<Switch> workings = word(query, "workings", Switch.class, faults);
        faults.refuseIfAny(Problems.Kind.INVALID_REQUEST);
        return new Options(
                as,
                picks,
                theme.orElse(Theme.AUTO),
                workings.filter(w -> w == Switch.TRUE).isPresent());
    }

    /** Whether faults should come as the value of a cell: a spreadsheet hides any other answer. */
    static boolean inlineErrors(Query query) {
        return values(query, "errors").contains(INLINE)
                && !values(query, "pick").isEmpty();
    }

    private static List<FieldPath> picks(Query query, Faults faults) {
        List<FieldPath> picks = new ArrayList<>();
        for (String pointer : values(query, "pick")) {
            if (pointer.startsWith("/")) {
                picks.add(FieldPath.ofPointer(pointer));
            } else {
                faults.add(
                        "/pick",
                        "not_a_pointer",
                        "pick is \""
                                + Nearest.shortened(pointer)
                                + "\": it must be a JSON Pointer into the answer, like /computed_by/version");
            }
        }
        return picks;
    }

    private static <E extends Enum<E>> Optional<E> word(Query query, String name, Class<E> type, Faults faults) {
        List<String> given = values(query, name);
        if (given.size() > 1) {
            faults.add("/" + name, "repeated", name + " is given more than once");
        }
        if (given.isEmpty()) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        for (E constant : type.getEnumConstants()) {
            String word = word(constant);
            if (word.equals(given.get(0))) {
                return Optional.of(constant);
            }
            words.add(word);
        }
        unknown(name, given.get(0), "one of " + String.join(", ", words), faults);
        return Optional.empty();
    }

    /** An option's value as a query has it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT);
    }

    private static void unknown(String name, String given, String wanted, Faults faults) {
        faults.add(
                "/" + name, "unknown_value", name + " is \"" + Nearest.shortened(given) + "\": it must be " + wanted);
    }

    private static List<String> values(Query query, String name) {
        return query.options().stream()
                .filter(option -> option.name().equals(name))
                .map(Query.Parameter::value)
                .toList();
    }
}
