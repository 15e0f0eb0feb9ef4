package trestle.battery;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A discharge as samples of time, voltage and energy; ours or a published one. */
final class SampledCurve {
    private final List<double[]> rows;

    SampledCurve(List<double[]> rows) {
        this.rows = rows;
    }

    /** Reads time_s, voltage_v, energy_wh and what follows, energy to joules. */
    static SampledCurve read(String resource) {
        List<double[]> rows = rowsOf(resource);
        rows.forEach(row -> row[2] *= 3600);
        return new SampledCurve(rows);
    }

    /** Rows of numbers under one heading. */
    private static List<double[]> rowsOf(String resource) {
        try (InputStream in = SampledCurve.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(","))
                    .map(row ->
                            Arrays.stream(row).mapToDouble(Double::parseDouble).toArray())
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Runs the model and keeps every step. */
    static SampledCurve of(PackState start, Load load, double lastCellV) {
        return of(start, load, lastCellV, Trace.NONE);
    }

    static SampledCurve of(PackState start, Load load, double lastCellV, Trace first) {
        List<double[]> rows = new ArrayList<>();
        Limits limits = Limits.unguarded(start.pack(), Double.NEGATIVE_INFINITY, lastCellV);
        Discharge.of(start, load, limits, now -> {
            first.point(now);
            rows.add(new double[] {
                now.tally().timeS,
                now.circuit().voltageV(),
                now.tally().energyJ,
                now.circuit().highestK()
            });
        });
        return new SampledCurve(rows);
    }

    List<double[]> rows() {
        return rows;
    }

    double durationS() {
        return rows.get(rows.size() - 1)[0];
    }

    double energyJ() {
        return rows.get(rows.size() - 1)[2];
    }

    double lastV() {
        return rows.get(rows.size() - 1)[1];
    }

    /** Value of a column at a time, between samples by a straight line. */
    double at(double timeS, int column) {
        int i = 1;
        while (i < rows.size() - 1 && rows.get(i)[0] < timeS) {
            i++;
        }
        double[] from = rows.get(i - 1);
        double[] to = rows.get(i);
        return from[column] + (to[column] - from[column]) * (timeS - from[0]) / (to[0] - from[0]);
    }

    /** Energy when the voltage first falls to a cutoff, J; 0 where it starts below it. */
    double energyAtJ(double cutoffV) {
        if (rows.get(0)[1] <= cutoffV) {
            return 0;
        }
        for (int i = 1; i < rows.size(); i++) {
            double[] from = rows.get(i - 1);
            double[] to = rows.get(i);
            if (to[1] <= cutoffV) {
                return from[2] + (to[2] - from[2]) * (from[1] - cutoffV) / (from[1] - to[1]);
            }
        }
        throw new AssertionError("the curve does not reach " + cutoffV + " V");
    }

    /** Error of the other's energy at a cutoff, % of this curve's energy. */
    double energyErrorPercent(SampledCurve other, double cutoffV) {
        return 100 * (other.energyAtJ(cutoffV) - energyAtJ(cutoffV)) / energyJ();
    }

    /**
     * Root mean square difference of voltage at this curve's own samples between 0.5 and 95 % of its
     * time, V: for loads that step, where a straight line between samples means nothing.
     */
    double rmsAtSamplesV(SampledCurve other) {
        return Math.sqrt(rows.stream()
                .filter(row -> row[0] >= 0.005 * durationS() && row[0] <= 0.95 * durationS())
                .mapToDouble(row -> row[1] - other.at(row[0], 1))
                .map(difference -> difference * difference)
                .average()
                .orElseThrow());
    }

    /** Root mean square difference of voltage over 0.5 to 95 % of this curve's time, V. */
    double rmsAgainstV(SampledCurve other) {
        int samples = 400;
        double sum = 0;
        for (int i = 0; i <= samples; i++) {
            double timeS = durationS() * (0.005 + 0.945 * i / samples);
            double difference = at(timeS, 1) - other.at(Math.min(timeS, other.durationS()), 1);
            sum += difference * difference;
        }
        return Math.sqrt(sum / (samples + 1));
    }
}
