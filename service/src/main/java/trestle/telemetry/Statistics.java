package trestle.telemetry;

import java.util.Arrays;

/** Order statistics and the like, of plain arrays. */
final class Statistics {
    /** Standard deviation over median absolute deviation of a normal distribution. */
    static final double DEVIATION_PER_MEDIAN = 1.4826;

    /** A correlation of neighbours is not believed beyond this, or a short series would claim nothing at all. */
    private static final double MOST_CORRELATED = 0.98;

    private Statistics() {}

    static double median(double[] values) {
        return quantile(values, 0.5);
    }

    /** The value below which this share of the values lies. */
    static double quantile(double[] values, double share) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** Standard deviation from the median absolute value: outliers do not widen it. */
    static double robustDeviation(double[] residuals) {
        return DEVIATION_PER_MEDIAN
                * median(Arrays.stream(residuals).map(Math::abs).toArray());
    }

    /**
     * By how much the variance of a mean grows, since neighbouring residuals resemble each other: {@code (1 + r)/(1 -
     * r)} of the lag-one correlation r, never below 1.
     */
    static double inflation(double[] residuals) {
        double square = 0;
        double product = 0;
        for (int i = 0; i < residuals.length; i++) {
            square += residuals[i] * residuals[i];
            product += i == 0 ? 0 : residuals[i] * residuals[i - 1];
        }
        double r = square == 0 ? 0 : Math.min(MOST_CORRELATED, Math.max(0, product / square));
        return (1 + r) / (1 - r);
    }
}
