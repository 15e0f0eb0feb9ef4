package trestle.finding;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import trestle.numeric.Decimal;

/**
 * Puts values into the places of a sentence. Of what {@link String#format} knows, the sentences of a judgement use
 * four: {@code %s}, {@code %d}, {@code %.2f} and {@code %%}. Most of a small answer's time went into the other three
 * dozen, so these are filled here; a sentence with any other place goes to the library.
 */
final class Sentence {
    private Sentence() {}

    /**
     * Fills the places.
     *
     * @param sentence as {@link String#format} has it
     * @param values in the order of their places
     * @return the text, the same in every country
     */
    static String filled(String sentence, Object... values) {
        StringBuilder text = new StringBuilder(sentence.length() + 8 * values.length);
        int taken = 0;
        int from = 0;
        for (int place = sentence.indexOf('%'); place >= 0; place = sentence.indexOf('%', from)) {
            text.append(sentence, from, place);
            from = place + 2;
            char kind = from <= sentence.length() ? sentence.charAt(place + 1) : 0;
            if (kind == '%') {
                text.append('%');
                continue;
            }
            if (taken == values.length) {
                return byTheLibrary(sentence, values);
            }
            Object value = now(values[taken++]);
            if (kind == 's') {
                text.append(value);
            } else if (kind == 'd' && (value instanceof Integer || value instanceof Long)) {
                text.append(value);
            } else if (kind == '.' && value instanceof Double number && isFixed(sentence, place)) {
                text.append(Decimal.fixed(number, sentence.charAt(place + 2) - '0'));
                from = place + 4;
            } else {
                return byTheLibrary(sentence, values);
            }
        }
        return text.append(sentence, from, sentence.length()).toString();
    }

    /** Whether a place is one digit of places after the point: {@code %.2f}. */
    private static boolean isFixed(String sentence, int place) {
        return place + 3 < sentence.length()
                && Character.isDigit(sentence.charAt(place + 2))
                && sentence.charAt(place + 3) == 'f';
    }

    /** What takes long to work out is given as a supplier, and asked for only by a sentence that is said. */
    private static Object now(Object value) {
        return value instanceof Supplier<?> later ? later.get() : value;
    }

    private static String byTheLibrary(String sentence, Object... values) {
        return String.format(
                Locale.ROOT, sentence, Arrays.stream(values).map(Sentence::now).toArray());
    }
}
