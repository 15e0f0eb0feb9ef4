package trestle.figure;

import java.util.ArrayList;
import java.util.List;
import trestle.numeric.MonotoneCubic;

/**
 * A smooth line through values that were computed at some places only.
 *
 * <p>Between two values the line stays between them, so that it shows no peak that was not computed.
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
        MonotoneCubic curve = new MonotoneCubic(
                values.stream().mapToDouble(Point::x).toArray(),
                values.stream().mapToDouble(Point::y).toArray());
        List<Point> line = new ArrayList<>();
        for (int i = 0; i + 1 < values.size(); i++) {
            double fromX = values.get(i).x();
            double width = values.get(i + 1).x() - fromX;
            for (int step = 0; step < STEPS; step++) {
                double x = fromX + width * step / STEPS;
                line.add(new Point(x, curve.at(x)));
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
}
