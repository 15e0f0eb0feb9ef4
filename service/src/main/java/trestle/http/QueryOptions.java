package trestle.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trestle.binding.Faults;
import trestle.binding.FieldPath;
import trestle.binding.Nearest;
import trestle.binding.Reason;
import trestle.endpoint.Certainty;
import trestle.endpoint.PartName;
import trestle.figure.Theme;
import trestle.rendering.Options;
import trestle.rendering.Options.Form;

/** Reads from a query what is asked of the HTTP layer. */
final class QueryOptions {
    private static final String INLINE = "inline";

    /** On or off. */
    private enum Switch {
        TRUE,
        FALSE
    }

    private QueryOptions() {}

    /**
     * The options.
     *
     * @throws trestle.binding.Refusal when one of them has no such value
     */
    static Options of(Query query) {
        return of(query, Certainty.Bands.FULL);
    }

    /**
     * The options.
     *
     * @param query of the request
     * @param usual bands where none are asked for
     * @throws trestle.binding.Refusal when one of them has no such value
     */
    static Options of(Query query, Certainty.Bands usual) {
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
        boolean workings = isOn(query, "workings", faults);
        boolean cautions = isOn(query, "cautions", faults);
        Certainty certainty = certainty(query, usual, faults);
        Optional<PartName> part = part(query, faults);
        faults.refuseIfAny(Reason.INVALID);
        return new Options(as, picks, theme.orElse(Theme.AUTO), workings, cautions, certainty, part);
    }

    private static Optional<PartName> part(Query query, Faults faults) {
        Optional<String> part = once(query, "part", faults);
        Optional<String> run = once(query, "run", faults);
        if (run.isPresent() && part.isEmpty()) {
            faults.add("/run", "contradiction", "run goes with part only");
        }
        return part.map(name -> new PartName(name, run));
    }

    private static Optional<String> once(Query query, String name, Faults faults) {
        List<String> given = values(query, name);
        if (given.size() > 1) {
            faults.add("/" + name, "repeated", name + " is given more than once");
        }
        return given.stream().findFirst();
    }

    private static Certainty certainty(Query query, Certainty.Bands usual, Faults faults) {
        boolean estimates = word(query, "estimates", Switch.class, faults)
                .filter(given -> given == Switch.FALSE)
                .isEmpty();
        Certainty.Bands bands =
                word(query, "bands", Certainty.Bands.class, faults).orElse(usual);
        return new Certainty(estimates, bands);
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

    private static boolean isOn(Query query, String name, Faults faults) {
        return word(query, name, Switch.class, faults)
                .filter(given -> given == Switch.TRUE)
                .isPresent();
    }

    private static <E extends Enum<E>> Optional<E> word(Query query, String name, Class<E> type, Faults faults) {
        Optional<String> given = once(query, name, faults);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        for (E constant : type.getEnumConstants()) {
            String word = Options.word(constant);
            if (word.equals(given.get())) {
                return Optional.of(constant);
            }
            words.add(word);
        }
        unknown(name, given.get(), "one of " + String.join(", ", words), faults);
        return Optional.empty();
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
