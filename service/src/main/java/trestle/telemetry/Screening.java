package trestle.telemetry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts the rows of a log in order, and finds gaps, restarts of the clock and sensors that stand still. */
final class Screening {
    /** A step longer than this many usual ones is a gap: common practice, no source. */
    static final double GAP_IN_STEPS = 5;

    /** A sensor that shows one figure for longer than this, while others move, stands still: common practice, s. */
    private static final double FROZEN_S = 30;

    /** Rows that must follow a fall of time for it to be a restart of the clock and no stray row. */
    private static final int RESTART_ROWS = 20;

    /** Share of the steps in which another sensor must change for the flight to be moving. */
    private static final double MOVING_SHARE = 0.3;

    private final Telemetry log;
    private int outOfOrder;
    private int duplicates;

    private Screening(Telemetry log) {
        this.log = log;
    }

    /** The rows that stand; empty where fewer than two do. */
    static Optional<Screened> of(Telemetry log) {
        return new Screening(log).screened();
    }

    private Optional<Screened> screened() {
        List<Integer> starts = stretches();
        int from = 0;
        int to = 0;
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1) : log.count();
            if (end - starts.get(i) > to - from) {
                from = starts.get(i);
                to = end;
            }
        }
        Telemetry rows = log.rows(rising(from, to));
        if (rows.count() < 2) {
            return Optional.empty();
        }
        double[] steps = new double[rows.count() - 1];
        Arrays.setAll(steps, i -> rows.timeS(i + 1) - rows.timeS(i));
        double usualS = Statistics.median(steps);
        return Optional.of(new Screened(
                rows,
                usualS,
                gaps(rows, usualS),
                frozen(rows),
                outOfOrder,
                duplicates,
                starts.size() - 1,
                log.count() - (to - from)));
    }

    /** First rows of the stretches between restarts of the clock. */
    private List<Integer> stretches() {
        List<Integer> starts = new ArrayList<>(List.of(0));
        double latestS = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < log.count(); i++) {
            if (log.timeS(i) < latestS && staysBelow(i, latestS)) {
                starts.add(i);
                latestS = log.timeS(i);
            }
            latestS = Math.max(latestS, log.timeS(i));
        }
        return starts;
    }

    private boolean staysBelow(int row, double latestS) {
        if (log.count() - row < RESTART_ROWS) {
            return false;
        }
        for (int i = row; i < row + RESTART_ROWS; i++) {
            if (log.timeS(i) >= latestS) {
                return false;
            }
        }
        return true;
    }

    private int[] rising(int from, int to) {
        int[] kept = new int[to - from];
        int count = 0;
        double latestS = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            double t = log.timeS(i);
            if (t > latestS) {
                kept[count++] = i;
                latestS = t;
            } else if (t == latestS) {
                duplicates++;
            } else {
                outOfOrder++;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static List<Gap> gaps(Telemetry rows, double usualS) {
        List<Gap> gaps = new ArrayList<>();
        for (int i = 1; i < rows.count(); i++) {
            if (rows.timeS(i) - rows.timeS(i - 1) > GAP_IN_STEPS * usualS) {
                gaps.add(new Gap(rows.timeS(i - 1), rows.timeS(i)));
            }
        }
        return gaps;
    }

    private static List<FrozenSensor> frozen(Telemetry rows) {
        List<FrozenSensor> found = new ArrayList<>();
        for (Channel channel : rows.channels()) {
            int since = 0;
            for (int i = 1; channel.isLively() && i <= rows.count(); i++) {
                if (i < rows.count() && rows.at(channel, i) == rows.at(channel, since)) {
                    continue;
                }
                if (rows.timeS(i - 1) - rows.timeS(since) > FROZEN_S && othersMove(rows, channel, since, i)) {
                    found.add(new FrozenSensor(channel, rows.timeS(since), rows.timeS(i - 1)));
                }
                since = i;
            }
        }
        return found;
    }

    private static boolean othersMove(Telemetry rows, Channel still, int from, int to) {
        for (Channel other : rows.channels()) {
            int changes = 0;
            for (int i = from + 1; other != still && i < to; i++) {
                changes += rows.at(other, i) == rows.at(other, i - 1) ? 0 : 1;
            }
            if (changes > MOVING_SHARE * (to - from)) {
                return true;
            }
        }
        return false;
    }
}
