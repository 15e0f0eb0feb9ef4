package trestle.rendering;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trestle.binding.FieldPath;
import trestle.endpoint.Certainty;
import trestle.endpoint.PartName;
import trestle.figure.Theme;

/**
 * What a caller asks of the HTTP layer, beside the fields of the calculation.
 *
 * @param as the representation, for callers that cannot set a header
 * @param picks the values wanted instead of the whole answer
 * @param theme how drawings are coloured
 * @param workings whether the answer should say how it was reached
 * @param cautions whether a table should begin with its cautions
 * @param certainty whether to estimate what is left out, and how thoroughly to seek bands
 * @param part the part of the calculation that is asked for alone
 */
public record Options(
        Optional<Form> as,
        List<FieldPath> picks,
        Theme theme,
        boolean workings,
        boolean cautions,
        Certainty certainty,
        Optional<PartName> part) {
    /** The representations that the contract knows; a calculation need not offer all of them. */
    public enum Form {
        /** The whole, as the contract models it. */
        JSON,
        /** A table. */
        CSV,
        /** Lines of name and value, or one bare value. */
        TEXT,
        /** A picture. */
        SVG,
        /** A sheet to print. */
        HTML
    }

    /** Copies the list. */
    public Options {
        picks = List.copyOf(picks);
    }

    /**
     * An option's value as a query has it.
     *
     * @param constant the value
     * @return its word
     */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
