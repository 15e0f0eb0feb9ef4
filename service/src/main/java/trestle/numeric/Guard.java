package trestle.numeric;

import java.util.Locale;

/** Checks at the door of records and formulas; each returns the value it was given. */
public final class Guard {
    private Guard() {}

    /**
     * Refuses null.
     *
     * @param <T> type of the value
     * @param argument its name
     * @param value the value
     * @return the value
     */
    public static <T> T present(String argument, T value) {
        if (value == null) {
            throw new ImpossibleValue(argument, argument + " is missing");
        }
        return value;
    }

    /**
     * Refuses NaN and infinities.
     *
     * @param argument its name
     * @param value the value
     * @return the value
     */
    public static double finite(String argument, double value) {
        if (!Double.isFinite(value)) {
            throw new ImpossibleValue(argument, argument + " is not a finite number");
        }
        return value;
    }

    /**
     * Refuses zero, negative values, NaN and infinities.
     *
     * @param argument its name
     * @param value the value
     * @return the value
     */
    public static double positive(String argument, double value) {
        finite(argument, value);
        if (value <= 0) {
            throw new ImpossibleValue(argument, text("%s is %s, and must be above 0", argument, value));
        }
        return value;
    }

    /**
     * Refuses negative values, NaN and infinities.
     *
     * @param argument its name
     * @param value the value
     * @return the value
     */
    public static double notNegative(String argument, double value) {
        finite(argument, value);
        if (value < 0) {
            throw new ImpossibleValue(argument, text("%s is %s, and must not be below 0", argument, value));
        }
        return value;
    }

    /**
     * Refuses values outside a closed range, NaN and infinities.
     *
     * @param argument its name
     * @param value the value
     * @param least least allowed
     * @param greatest greatest allowed
     * @return the value
     */
    public static double within(String argument, double value, double least, double greatest) {
        finite(argument, value);
        if (value < least || value > greatest) {
            throw new ImpossibleValue(argument, text("%s is %s, outside %s to %s", argument, value, least, greatest));
        }
        return value;
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
