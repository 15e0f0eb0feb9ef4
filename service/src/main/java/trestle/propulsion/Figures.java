package trestle.propulsion;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as messages have them. */
final class Figures {
    private static final MathContext FOUR = new MathContext(4);

    private static final double WHOLE_FROM = 1000;

    private Figures() {}

    /** Four digits, or all before the point, without idle zeros and never in powers of ten. */
    static String of(double value) {
        return Math.abs(value) < WHOLE_FROM
                ? new BigDecimal(value).round(FOUR).stripTrailingZeros().toPlainString()
                : String.valueOf(Math.round(value));
    }
}
