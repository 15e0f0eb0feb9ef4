package trestle.numeric;

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
        int node = node(values.length, place);
        double share = place - node;
        double from = values[node];
        double to = values[node + 1];
        double before = node > 0 ? values[node - 1] : 2 * from - to;
        double after = node < values.length - 2 ? values[node + 2] : 2 * to - from;
        return between(before, from, to, after, share);
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
