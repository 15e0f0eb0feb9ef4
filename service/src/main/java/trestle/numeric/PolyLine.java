package trestle.numeric;

import java.util.Arrays;

/** Straight lines through points in rising order; beyond the ends the last slope goes on. */
public final class PolyLine {
    private final double[] x;
    private final double[] y;

    /**
     * The lines through points.
     *
     * @param x arguments, rising, two or more
     * @param y values, as many
     */
    public PolyLine(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new ImpossibleValue("points", "a line needs at least two points");
        }
        this.x = x.clone();
        this.y = y.clone();
    }

    /**
     * The value at an argument.
     *
     * @param place the argument
     * @return the value on the line there
     */
    public double at(double place) {
        int found = Arrays.binarySearch(x, place);
        int i = found >= 0 ? found : -found - 2;
        i = Math.max(0, Math.min(x.length - 2, i));
        return y[i] + (place - x[i]) * (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
}
