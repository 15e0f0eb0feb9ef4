package trestle.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * A smooth line through values that were computed at some places only.
 *
 * <p>Cubic pieces whose slopes are the harmonic means of the chords beside them: between two values
 * the line stays between them, so that it shows no peak that was not computed.
 *
 * @see "F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic
 *     interpolants, SIAM J. Sci. Stat. Comput. 5(2), 1984 (from memory)"
 */
final class Smooth {
    /** Pieces of a line from one value to the next: no corner is seen at this many. */
    private static final int STEPS = 8;

    private Smooth() {}

    /** The line, through every value; their places have to rise, else they are joined straight. */
    static List<Point> through(List<Point> values) {
        if (values.size() < 3 || !rise(values)) {
            return values;
        }
        List<Point> line = new ArrayList<>();
        for (int i = 0; i + 1 < values.size(); i++) {
            for (int step = 0; step < STEPS; step++) {
                line.add(between(values, i, (double) step / STEPS));
            }
        }
        line.add(values.get(values.size() - 1));
        return line;
    }

    private static boolean rise(List<Point> values) {
        for (int i = 1; i < values.size(); i++) {
            if (values.get(i).x() <= values.get(i - 1).x()) {
                return false;
            }
        }
        return true;
    }

    /** Hermite's cubic over one interval; t from 0 to 1. */
    private static Point between(List<Point> values, int i, double t) {
        Point a = values.get(i);
        Point b = values.get(i + 1);
        double width = b.x() - a.x();
        double from = slope(values, i) * width;
        double to = slope(values, i + 1) * width;
        double rise = b.y() - a.y();
        double y = a.y() + t * (from + t * (3 * rise - 2 * from - to + t * (from + to - 2 * rise)));
        return new Point(a.x() + t * width, y);
    }

    private static double slope(List<Point> values, int i) {
        if (i == 0) {
            return chord(values, 0);
        }
        if (i == values.size() - 1) {
            return chord(values, i - 1);
        }
        double before = chord(values, i - 1);
        double after = chord(values, i);
        return before * after > 0 ? 2 / (1 / before + 1 / after) : 0;
    }

    private static double chord(List<Point> values, int i) {
        Point a = values.get(i);
        Point b = values.get(i + 1);
        return (b.y() - a.y()) / (b.x() - a.x());
    }
}
