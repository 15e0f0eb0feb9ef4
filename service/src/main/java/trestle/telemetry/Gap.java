package trestle.telemetry;

/**
 * A stretch without rows.
 *
 * @param startS last row before it, s
 * @param endS first row after it, s
 */
public record Gap(double startS, double endS) {
    /**
     * How long.
     *
     * @return duration, s
     */
    public double durationS() {
        return endS - startS;
    }
}
