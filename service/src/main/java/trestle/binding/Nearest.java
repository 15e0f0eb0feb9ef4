package trestle.binding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Says what a name that is not known was probably meant to be. */
public final class Nearest {
    /**
     * Names less alike than this are not offered as what was meant; found by trying typing errors.
     */
    private static final double LEAST_LIKENESS = 0.8;

    private static final int LONGEST_ECHO = 40;

    private Nearest() {}

    /**
     * One clause about an unknown name: the nearest known one, or all that there are.
     *
     * @param name that is not known
     * @param known names
     * @param what the known ones are, as in "a field here"
     * @return the clause
     */
    public static String to(String name, Collection<String> known, String what) {
        Optional<String> renamed = Renamed.now(name, known);
        if (renamed.isPresent()) {
            return name + " is now " + renamed.get();
        }
        JaroWinklerSimilarity likeness = new JaroWinklerSimilarity();
        String said = (name.isEmpty() ? "an empty name" : shortened(name)) + " is not " + what;
        return known.stream()
                .max(Comparator.comparingDouble(k -> likeness.apply(name, k)))
                .filter(nearest -> likeness.apply(name, nearest) >= LEAST_LIKENESS)
                .map(nearest -> said + "; did you mean " + nearest + "?")
                .orElseGet(() -> said + "; known are " + all(known));
    }

    /**
     * A text of the caller's, short enough to read.
     *
     * @param text any
     * @return it, or its beginning
     */
    public static String shortened(String text) {
        return text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "…";
    }

    private static String all(Collection<String> known) {
        return known.isEmpty() ? "none" : String.join(", ", known);
    }
}
