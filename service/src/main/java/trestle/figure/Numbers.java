package trestle.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, alike in every locale. */
public final class Numbers {
    private static final char MINUS = '−';

    /** Beyond this, and nearer to 0 than its inverse, powers of ten are written. */
    private static final double LONGEST = 1e6;

    private static final double SHORTEST = 1e-4;

    private Numbers() {}

    /** A coordinate to a tenth of a unit, which no eye tells from finer. */
    static void coordinate(double value, StringBuilder out) {
        long tenths = Math.round(value * 10);
        if (tenths < 0) {
            out.append('-');
            tenths = -tenths;
        }
        out.append(tenths / 10);
        if (tenths % 10 != 0) {
            out.append('.').append((char) ('0' + tenths % 10));
        }
    }

    /**
     * A value to so many significant digits.
     *
     * @param value finite
     * @param digits 1 or more
     * @return for example 12.4, 0.031 or 1.2e9
     */
    public static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        double size = rounded.abs().doubleValue();
        return size >= LONGEST || size < SHORTEST
                ? withPower(rounded)
                : signed(rounded.stripTrailingZeros().toPlainString());
    }

    /** The same with a power of ten, whatever its size. */
    static String power(double value, int digits) {
        return value == 0 ? "0" : withPower(new BigDecimal(value).round(new MathContext(digits)));
    }

    /**
     * A value to so many places after the point.
     *
     * @param value finite
     * @param places 0 or more
     * @return for example 12.40; three digits and a power of ten from a million on
     */
    public static String fixed(double value, int places) {
        if (Math.abs(value) >= LONGEST) {
            return significant(value, 3);
        }
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : signed(rounded.toPlainString());
    }

    /** A whole number. */
    static String whole(double value) {
        return fixed(value, 0);
    }

    private static String withPower(BigDecimal value) {
        BigDecimal digits = value.stripTrailingZeros();
        int power = digits.precision() - digits.scale() - 1;
        return signed(digits.scaleByPowerOfTen(-power).toPlainString() + "e" + power);
    }

    private static String signed(String plain) {
        return plain.replace('-', MINUS);
    }
}
