package trestle.battery;

import java.util.Arrays;

/** Straight lines through points in rising order; beyond the ends the last slope goes on. */
final class PolyLine {
    private final double[] x;
    private final double[] y;

    PolyLine(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
    }

    double at(double place) {
        int found = Arrays.binarySearch(x, place);
        int i = found >= 0 ? found : -found - 2;
        i = Math.max(0, Math.min(x.length - 2, i));
        return y[i] + (place - x[i]) * (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
}
