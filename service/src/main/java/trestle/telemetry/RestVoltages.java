package trestle.telemetry;

import java.util.OptionalDouble;

/**
 * Pack voltage at rest at the ends of a log: the mean of the last five seconds of thirty or more with hardly any current.
 *
 * @param beforeV before the flight, V; empty where the log shows no such rest
 * @param afterV after it, V
 */
public record RestVoltages(OptionalDouble beforeV, OptionalDouble afterV) {
    private static final double LEAST_S = 30;
    private static final double MEAN_S = 5;

    /** Current at rest over the 99 % point of the current: common practice, no source. */
    private static final double REST_SHARE = 0.02;

    static RestVoltages of(Screened log) {
        Telemetry rows = log.rows();
        double[] sizes = new double[rows.count()];
        java.util.Arrays.setAll(sizes, i -> Math.abs(rows.at(Channel.CURRENT, i)));
        double most = REST_SHARE * Statistics.quantile(sizes, 0.99);
        int first = 0;
        while (first + 1 < sizes.length && sizes[first + 1] <= most) {
            first++;
        }
        int last = sizes.length - 1;
        while (last > 0 && sizes[last - 1] <= most) {
            last--;
        }
        boolean flown = first < last;
        return new RestVoltages(
                flown && sizes[0] <= most ? mean(rows, 0, first) : OptionalDouble.empty(),
                flown && sizes[sizes.length - 1] <= most ? mean(rows, last, sizes.length - 1) : OptionalDouble.empty());
    }

    private static OptionalDouble mean(Telemetry rows, int from, int to) {
        if (rows.timeS(to) - rows.timeS(from) < LEAST_S) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        int count = 0;
        for (int i = to; i >= from && rows.timeS(to) - rows.timeS(i) <= MEAN_S; i--) {
            sum += rows.at(Channel.VOLTAGE, i);
            count++;
        }
        return OptionalDouble.of(sum / count);
    }
}
