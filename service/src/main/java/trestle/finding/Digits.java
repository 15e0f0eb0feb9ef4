package trestle.finding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import trestle.numeric.Decimal;

/**
 * Two numbers of one sentence, with as many digits as it takes to tell them apart.
 *
 * @param first the first
 * @param second the second
 */
public record Digits(String first, String second) {
    /** Beyond this two numbers are the same to a builder. */
    private static final int MOST_DECIMALS = 6;

    /**
     * Two numbers as a sentence prints them.
     *
     * @param first the first
     * @param second the second
     * @param usual decimals where these tell them apart, 0 to 6
     * @return the texts
     */
    public static Digits apart(double first, double second, int usual) {
        int decimals = usual;
        while (decimals < MOST_DECIMALS
                && first != second
                && fixed(first, decimals).equals(fixed(second, decimals))) {
            decimals++;
        }
        return new Digits(fixed(first, decimals), fixed(second, decimals));
    }

    /**
     * A number beside another.
     *
     * @param value the number to print
     * @param other the number that it stands beside
     * @param usual decimals where the two differ anyway, 0 to 6
     * @return the number, with more decimals where it would look like the other
     */
    public static String beside(double value, double other, int usual) {
        return apart(value, other, usual).first();
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

    private static String fixed(double number, int decimals) {
        return Decimal.fixed(number, decimals);
    }
}
