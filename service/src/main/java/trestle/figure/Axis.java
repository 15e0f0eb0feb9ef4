package trestle.figure;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Values along one side of a plot.
 *
 * @param from value at its beginning
 * @param to value at its end, above {@code from}
 * @param ticks marks within
 * @param logarithmic whether equal ratios take equal lengths
 */
record Axis(double from, double to, List<Tick> ticks, boolean logarithmic) {
    /** A span below this share of its values cannot be told apart. */
    private static final double LEAST_SPAN = 1e-9;

    /** Room above the greatest value, so that no curve lies on the frame. */
    private static final double HEADROOM = 1.06;

    private static final int MOST_DECADES = 6;

    /** Copies the list. */
    Axis {
        ticks = List.copyOf(ticks);
    }

    /** Ends as given. */
    static Axis between(double from, double to, int aboutTicks) {
        double least = LEAST_SPAN * Math.max(1e-3, Math.max(Math.abs(from), Math.abs(to)));
        double end = to - from >= least ? to : from + Math.max(least, 1);
        return new Axis(from, end, Ticks.linear(from, end, Ticks.step(end - from, aboutTicks)), false);
    }

    /** Ends at ticks, around the values. */
    static Axis around(double least, double greatest, int aboutTicks) {
        Axis tight = between(least, greatest, aboutTicks);
        double step = Ticks.step(tight.to - tight.from, aboutTicks);
        return between(step * Math.floor(tight.from / step), step * Math.ceil(tight.to / step), aboutTicks);
    }

    /** From 0 to a tick above the greatest value. */
    static Axis fromZero(double greatest, int aboutTicks) {
        return around(0, greatest > 0 ? HEADROOM * greatest : 1, aboutTicks);
    }

    /** Equal ratios take equal lengths; at most six decades, the lowest ones left out. */
    static Axis logarithmic(double least, double greatest) {
        double to = greatest > 0 ? greatest : 1;
        double from = Math.max(least, to / Math.pow(10, MOST_DECADES));
        double end = to > from * (1 + LEAST_SPAN) ? to : from * 10;
        return new Axis(from, end, Ticks.logarithmic(from, end), true);
    }

    /** One place a name: 0, 1, 2, ... */
    static Axis ofNames(List<String> names) {
        return new Axis(
                -0.7,
                names.size() - 0.3,
                IntStream.range(0, names.size())
                        .mapToObj(i -> new Tick(i, names.get(i)))
                        .toList(),
                false);
    }

    /** Where a value stands: 0 at the beginning, 1 at the end, beyond these outside. */
    double share(double value) {
        return logarithmic
                ? Math.log(Math.max(value, Double.MIN_NORMAL) / from) / Math.log(to / from)
                : (value - from) / (to - from);
    }

    /** The same, with what lies outside at the nearer end. */
    double fraction(double value) {
        return Math.max(0, Math.min(1, share(value)));
    }

    boolean holds(double value) {
        return value >= from && value <= to;
    }
}
