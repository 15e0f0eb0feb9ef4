package trestle.numeric;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Doubles as decimal text, half up from the shortest decimal that tells the double. An answer holds thousands of them,
 * and long division of big integers for each took more time than the physics: where a multiplication by a power of ten
 * leaves no doubt on which side of a half the number lies, it decides; the rest goes the long way.
 */
public final class Decimal {
    /** Powers of ten that a double holds exactly. */
    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    /**
     * A product below a milliard is off by at most 2e-7: half a unit for the product, and half a unit for the shortest
     * decimal, which need not be the double itself.
     */
    private static final double DOUBT = 1e-6;

    /** From this power of ten on, and below its counterpart, one is written, as {@link Double#toString} does. */
    private static final int FIRST_WITH_POWER = 7;

    private static final int LAST_PLAIN = -3;
    /** Sign, nine digits, seven zeros and a point. */
    private static final int LONGEST_TEXT = 20;

    private static final double LOG10_OF_2 = 0.301029995663981195;

    private Decimal() {}

    /**
     * A number with so many places after the point, like {@code %.2f}.
     *
     * @param value any number
     * @param places 0 to 22
     * @return for example 12.40
     */
    public static String fixed(double value, int places) {
        double size = Math.abs(value);
        long units = Double.isFinite(size) ? nearest(size * POWERS[places]) : -1;
        if (units < 0) {
            return slowlyFixed(value, places);
        }
        StringBuilder text = new StringBuilder(16);
        if (Double.doubleToRawLongBits(value) < 0) {
            text.append('-');
        }
        if (places == 0) {
            return text.append(units).toString();
        }
        String digits = Long.toString(units);
        int whole = digits.length() - places;
        return whole > 0
                ? text.append(digits, 0, whole)
                        .append('.')
                        .append(digits, whole, digits.length())
                        .toString()
                : text.append("0.").append("0".repeat(-whole)).append(digits).toString();
    }

    /**
     * A number to so many significant digits, as {@link Double#toString} writes the double next to it.
     *
     * @param value finite
     * @param digits 1 to 9
     * @return for example 12.4, 0.031 or 1.2E9
     */
    public static String significant(double value, int digits) {
        double size = Math.abs(value);
        if (size == 0) {
            return Double.toString(value);
        }
        int exponent = (int) Math.floor(Math.getExponent(size) * LOG10_OF_2);
        if (exponent < -12 || exponent > 21) {
            return slowlySignificant(value, digits);
        }
        if (size >= power(exponent + 1)) {
            exponent++;
        }
        int shift = digits - 1 - exponent;
        long units = nearest(shift >= 0 ? size * POWERS[shift] : size / POWERS[-shift]);
        if (units < 0) {
            return slowlySignificant(value, digits);
        }
        return written(value < 0, units, -shift);
    }

    private static double power(int exponent) {
        return exponent >= 0 ? POWERS[exponent] : 1 / POWERS[-exponent];
    }

    /** The nearest whole number; -1 where it is too near to a half to tell, or too great. */
    private static long nearest(double scaled) {
        if (!(scaled < 1e9)) {
            return -1;
        }
        long whole = (long) scaled;
        double rest = scaled - whole;
        if (Math.abs(rest - 0.5) < DOUBT) {
            return -1;
        }
        return rest > 0.5 ? whole + 1 : whole;
    }

    /** Writes {@code units · 10^exponent}, above 0. */
    private static String written(boolean negative, long units, int exponent) {
        long digits = units;
        int power = exponent;
        while (digits % 10 == 0) {
            digits /= 10;
            power++;
        }
        char[] text = new char[LONGEST_TEXT];
        int end = LONGEST_TEXT;
        int leading = power + count(digits) - 1;
        if (leading >= FIRST_WITH_POWER || leading < LAST_PLAIN) {
            return scientific(negative, digits, leading);
        }
        int place = power;
        if (place >= 0) {
            text[--end] = '0';
            text[--end] = '.';
            while (place > 0) {
                text[--end] = '0';
                place--;
            }
        }
        while (digits > 0 || place < 1) {
            text[--end] = (char) ('0' + digits % 10);
            digits /= 10;
            if (++place == 0) {
                text[--end] = '.';
            }
        }
        if (negative) {
            text[--end] = '-';
        }
        return new String(text, end, LONGEST_TEXT - end);
    }

    private static String scientific(boolean negative, long digits, int leading) {
        String plain = Long.toString(digits);
        String rest = plain.length() > 1 ? plain.substring(1) : "0";
        return (negative ? "-" : "") + plain.charAt(0) + '.' + rest + 'E' + leading;
    }

    private static int count(long digits) {
        int count = 1;
        for (long rest = digits; rest >= 10; rest /= 10) {
            count++;
        }
        return count;
    }

    private static String slowlyFixed(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    private static String slowlySignificant(double value, int digits) {
        BigDecimal shortest = BigDecimal.valueOf(value);
        return Double.toString(
                shortest.precision() <= digits
                        ? value
                        : shortest.round(new MathContext(digits, RoundingMode.HALF_UP))
                                .doubleValue());
    }
}
