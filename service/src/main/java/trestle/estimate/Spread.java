package trestle.estimate;

import trestle.numeric.Guard;

/**
 * How far a number that nobody measured may lie from its usual value, as a function of one standard normal draw.
 *
 * <p>Published scatter is mostly of ratios, so most spreads are log-normal; one with unlike sides is two half
 * log-normals that meet at the median; only what may be zero or negative is normal.
 */
public interface Spread {
    /** Draws further out than this are taken as this: one in a hundred, where no published scatter reaches. */
    double FURTHEST = 2.6;

    /** Standard normal deviate of the 90 % point. */
    double Z90 = 1.2815515655446004;

    /** Mean of the absolute value of a standard normal, inverted: standard deviation over mean absolute error. */
    double DEVIATION_PER_MEAN_ERROR = 1.2533141373155003;

    /**
     * The value at a draw.
     *
     * @param z standard normal draw; clipped to ±2.6
     * @return the value
     */
    double at(double z);

    /** The middle value. */
    default double median() {
        return at(0);
    }

    /** The value that one in ten falls below. */
    default double low() {
        return at(-Z90);
    }

    /** The value that one in ten exceeds. */
    default double high() {
        return at(Z90);
    }

    /**
     * x = m exp(s z).
     *
     * @param median m, above 0
     * @param deviation s, standard deviation of ln x
     * @return the spread
     */
    static Spread logNormal(double median, double deviation) {
        Guard.positive("median", median);
        Guard.notNegative("deviation", deviation);
        return z -> median * Math.exp(deviation * clipped(z));
    }

    /**
     * Two half log-normals: x = m (low/m)^(−z/z90) below the median, m (high/m)^(z/z90) above it.
     *
     * @param low 10 % point, above 0
     * @param median 50 % point
     * @param high 90 % point
     * @return the spread
     */
    static Spread between(double low, double median, double high) {
        Guard.positive("low", low);
        double below = Math.log(median / low) / Z90;
        double above = Math.log(high / median) / Z90;
        Guard.notNegative("median over low", below);
        Guard.notNegative("high over median", above);
        return z -> median * Math.exp((z < 0 ? below : above) * clipped(z));
    }

    /**
     * x = m + s z, for what may be zero or negative.
     *
     * @param mean m
     * @param deviation s
     * @return the spread
     */
    static Spread normal(double mean, double deviation) {
        Guard.notNegative("deviation", deviation);
        return z -> mean + deviation * clipped(z);
    }

    /**
     * This spread times a number that is known.
     *
     * @param factor above 0
     * @return the spread of the product
     */
    default Spread times(double factor) {
        Guard.positive("factor", factor);
        return z -> factor * at(z);
    }

    private static double clipped(double z) {
        return Math.max(-FURTHEST, Math.min(FURTHEST, z));
    }
}
