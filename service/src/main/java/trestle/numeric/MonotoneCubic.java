package trestle.numeric;

/**
 * A piecewise cubic through given points that never overshoots them: between two points it stays
 * between their values. Slopes are weighted harmonic means of the chords beside a point, 0 at a turning
 * point.
 *
 * @see "F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic
 *     interpolants, SIAM J. Sci. Stat. Comput. 5(2), 1984, 300–304 (from memory)"
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /**
     * The cubic through points.
     *
     * @param x arguments, rising, at least two
     * @param y values, as many
     */
    public MonotoneCubic(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new ImpossibleValue("points", "a curve needs at least two points");
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new ImpossibleValue("points", "the points of a curve must rise: " + x[i - 1] + ", " + x[i]);
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.slope = slopes(x, y);
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] slope = new double[x.length];
        slope[0] = secant(x, y, 0);
        slope[last] = secant(x, y, last - 1);
        for (int i = 1; i < last; i++) {
            double before = secant(x, y, i - 1);
            double after = secant(x, y, i);
            if (before * after > 0) {
                double h0 = x[i] - x[i - 1];
                double h1 = x[i + 1] - x[i];
                slope[i] = 3 * (h0 + h1) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after);
            }
        }
        return slope;
    }

    private static double secant(double[] x, double[] y, int i) {
        return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }

    /**
     * The value at an argument; outside the points the end value is held.
     *
     * @param argument the argument
     * @return the value there
     */
    public double at(double argument) {
        int last = x.length - 1;
        if (argument <= x[0]) {
            return y[0];
        }
        if (argument >= x[last]) {
            return y[last];
        }
        int i = 0;
        while (argument > x[i + 1]) {
            i++;
        }
        double h = x[i + 1] - x[i];
        double t = (argument - x[i]) / h;
        double u = 1 - t;
        return u * u * (1 + 2 * t) * y[i]
                + t * t * (3 - 2 * t) * y[i + 1]
                + h * t * u * (u * slope[i] - t * slope[i + 1]);
    }

    /**
     * The first point.
     *
     * @return its argument
     */
    public double first() {
        return x[0];
    }

    /**
     * The last point.
     *
     * @return its argument
     */
    public double last() {
        return x[x.length - 1];
    }

    /**
     * Slope at the first point.
     *
     * @return value over argument
     */
    public double slopeAtFirst() {
        return slope[0];
    }

    /**
     * Slope at the last point.
     *
     * @return value over argument
     */
    public double slopeAtLast() {
        return slope[slope.length - 1];
    }
}
