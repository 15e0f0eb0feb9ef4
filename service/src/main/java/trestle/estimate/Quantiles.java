package trestle.estimate;

import java.util.Arrays;
import org.hipparchus.stat.descriptive.rank.Percentile;

/** Percentiles of a sample, between its values as Hyndman and Fan's seventh definition has them. */
final class Quantiles {
    private Quantiles() {}

    static Band band(double[] values) {
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        percentile.setData(sorted);
        return new Band(percentile.evaluate(10), percentile.evaluate(50), percentile.evaluate(90));
    }
}
