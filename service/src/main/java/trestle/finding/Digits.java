package trestle.finding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers in sentences, with as many digits as it takes to tell two of them apart. */
public final class Digits {
    /** Beyond this two numbers are the same to a builder. */
    private static final int MOST_DECIMALS = 6;

    private Digits() {}

    /**
     * A number beside another.
     *
     * @param value the number to print
     * @param other the number that it stands beside
     * @param decimals how many decimals do where the two differ anyway, 0 to 6
     * @return the number, with more decimals where it would look like the other
     */
    public static String beside(double value, double other, int decimals) {
        int needed = decimals;
        while (needed < MOST_DECIMALS && value != other && fixed(value, needed).equals(fixed(other, needed))) {
            needed++;
        }
        return fixed(value, needed);
    }

    /**
     * A number to so many digits, without zeros that say nothing and without powers of ten.
     *
     * @param value the number to print
     * @param digits significant digits, 1 or more
     * @return the number
     */
    public static String significant(double value, int digits) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
