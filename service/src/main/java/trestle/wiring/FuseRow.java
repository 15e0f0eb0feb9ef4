package trestle.wiring;

import java.util.List;

/**
 * A line of the reference table of blade fuses: what one of a rating carries, for how long, and the wire that it protects.
 * The shares of the rating are those of {@link FuseWindow}.
 *
 * @param ratedCurrentA rated current, A
 */
public record FuseRow(double ratedCurrentA) {
    private static final List<FuseRow> ROWS =
            FuseWindow.USUAL_RATINGS_A.stream().map(FuseRow::new).toList();

    /**
     * The table.
     *
     * @return smallest first
     */
    public static List<FuseRow> rows() {
        return ROWS;
    }

    /**
     * What it carries for good.
     *
     * @return current, A
     */
    public double continuousA() {
        return FuseWindow.CONTINUOUS * ratedCurrentA;
    }

    /**
     * The greatest peak that it is sure to carry.
     *
     * @param durationS how long the peak lasts, s, not negative
     * @return current, A
     */
    public double peakA(double durationS) {
        return FuseWindow.carried(durationS) * ratedCurrentA;
    }

    /**
     * What the wire behind it has to carry, since it may carry that for ten minutes itself.
     *
     * @return current, A
     */
    public double leastAmpacityA() {
        return FuseWindow.OPENS_AT * ratedCurrentA;
    }
}
