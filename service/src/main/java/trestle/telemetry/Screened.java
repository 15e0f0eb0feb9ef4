package trestle.telemetry;

import java.util.List;

/**
 * Rows in rising order of time, and what was found wrong with the log on the way.
 *
 * @param rows the rows that stand
 * @param usualStepS median time between rows, s
 * @param gaps stretches without rows
 * @param frozen sensors that stood still
 * @param outOfOrderCount rows left out since their time was before the row above them
 * @param duplicateCount rows left out since they have the time of the row above them
 * @param restartCount how often the clock started again; only the longest stretch between is kept
 * @param otherStretchCount rows left out since they belong to another stretch
 */
public record Screened(
        Telemetry rows,
        double usualStepS,
        List<Gap> gaps,
        List<FrozenSensor> frozen,
        int outOfOrderCount,
        int duplicateCount,
        int restartCount,
        int otherStretchCount) {
    /** Copies the lists. */
    public Screened {
        gaps = List.copyOf(gaps);
        frozen = List.copyOf(frozen);
    }

    /**
     * Time without rows.
     *
     * @return sum of the gaps, s
     */
    public double gapS() {
        return gaps.stream().mapToDouble(Gap::durationS).sum();
    }

    /**
     * From the first row to the last.
     *
     * @return duration, s
     */
    public double durationS() {
        return rows.timeS(rows.count() - 1) - rows.timeS(0);
    }

    /** Whether numbers may be added up from a row to the one after it. */
    boolean joined(int row) {
        return rows.timeS(row + 1) - rows.timeS(row) <= Screening.GAP_IN_STEPS * usualStepS;
    }
}
