package trestle.telemetry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pack's resistance from steps of load: {@code R = −Σ ΔV ΔI / Σ ΔI²} between neighbouring rows whose current differs
 * by much. Between neighbours the slow fall of the open-circuit voltage is nothing; the median fall of rows without a
 * step is taken off all the same.
 */
final class LoadSteps {
    /** A step is at least this share of the 99 % point of the current, common practice. */
    private static final double STEP_SHARE = 0.08;

    /** And so many deviations of its noise, so that noise makes no steps. */
    private static final double STEP_IN_DEVIATIONS = 4;

    private static final double LEAST_STEP_A = 1;
    private static final int LEAST_STEPS = 8;
    private static final double HUGE_SHARE = 0.99;

    private LoadSteps() {}

    static Optional<PackResistance> of(Screened log) {
        Telemetry rows = log.rows();
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i + 1 < rows.count(); i++) {
            if (log.joined(i)) {
                all.add(new double[] {
                    rows.at(Channel.CURRENT, i + 1) - rows.at(Channel.CURRENT, i),
                    rows.at(Channel.VOLTAGE, i + 1) - rows.at(Channel.VOLTAGE, i)
                });
            }
        }
        if (all.isEmpty()) {
            return Optional.empty();
        }
        double[] currents = new double[rows.count()];
        java.util.Arrays.setAll(currents, i -> Math.abs(rows.at(Channel.CURRENT, i)));
        double noise =
                Statistics.robustDeviation(all.stream().mapToDouble(s -> s[0]).toArray());
        double least = Math.max(
                LEAST_STEP_A,
                Math.max(STEP_IN_DEVIATIONS * noise, STEP_SHARE * Statistics.quantile(currents, HUGE_SHARE)));
        List<double[]> steps = all.stream().filter(s -> Math.abs(s[0]) >= least).toList();
        double[] still = all.stream()
                .filter(s -> Math.abs(s[0]) < least)
                .mapToDouble(s -> s[1])
                .toArray();
        double drift = still.length == 0 ? 0 : Statistics.median(still);
        return steps.size() < LEAST_STEPS ? Optional.empty() : slope(steps, drift);
    }

    private static Optional<PackResistance> slope(List<double[]> steps, double drift) {
        double square = 0;
        double product = 0;
        for (double[] step : steps) {
            square += step[0] * step[0];
            product -= step[0] * (step[1] - drift);
        }
        double slope = product / square;
        double left = steps.stream()
                .mapToDouble(s -> s[1] - drift + slope * s[0])
                .map(r -> r * r)
                .sum();
        double median = Statistics.median(
                steps.stream().mapToDouble(s -> -(s[1] - drift) / s[0]).toArray());
        double deviation = Math.sqrt(left / (steps.size() - 1) / square);
        return slope > 0 && median > 0
                ? Optional.of(new PackResistance(slope, median, deviation, steps.size()))
                : Optional.empty();
    }
}
