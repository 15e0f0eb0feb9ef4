package trestle.numeric;

import java.util.function.IntToDoubleFunction;

/** Values at even steps, read by a cubic through the neighbours (Catmull and Rom). */
public final class EvenCubic {
    private EvenCubic() {}

    /**
     * Cubic Hermite interpolation with central differences for slopes; at the ends the slope of the
     * last step.
     *
     * @param values values at even steps, two or more
     * @param place where to read, in steps from the first value, 0 to {@code values.length - 1}
     * @return the value there
     */
    public static double at(double[] values, double place) {
        return at(i -> values[i], values.length, place);
    }

    /**
     * The same on values that are worked out when they are asked for; at most four are.
     *
     * @param values value at each step
     * @param count how many there are, 2 or more
     * @param place where, in steps from the first value
     * @return the value there
     */
    public static double at(IntToDoubleFunction values, int count, double place) {
        int node = node(count, place);
        double from = values.applyAsDouble(node);
        double to = values.applyAsDouble(node + 1);
        double before = node > 0 ? values.applyAsDouble(node - 1) : 2 * from - to;
        double after = node < count - 2 ? values.applyAsDouble(node + 2) : 2 * to - from;
        return between(before, from, to, after, place - node);
    }

    /**
     * The step that a place lies in.
     *
     * @param count how many values
     * @param place where, in steps from the first value
     * @return the value before it
     */
    public static int node(int count, double place) {
        return Math.min(count - 2, (int) place);
    }

    /**
     * The same on four values.
     *
     * @param before value a step before {@code from}
     * @param from value at the share 0
     * @param to value at the share 1
     * @param after value a step after {@code to}
     * @param share where between, 0 to 1
     * @return the value there
     */
    public static double between(double before, double from, double to, double after, double share) {
        double slopeFrom = (to - before) / 2;
        double slopeTo = (after - from) / 2;
        double bend = slopeFrom + slopeTo - 2 * (to - from);
        double curve = to - from - slopeFrom - bend;
        return from + share * (slopeFrom + share * (curve + share * bend));
    }
}
