package trestle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * First-order indices of published test functions: I. Ishigami, T. Homma, "An importance quantification technique in
 * uncertainty analysis for computer models", ISUMA 1990; both as in Saltelli et al., Global Sensitivity Analysis, 2008.
 * The exact values follow from the definitions.
 */
class SobolIndexReferenceTest {
    private static final int POINTS = 4096;

    /**
     * In y = x1 + … a squared curve of a normal draw of a uniform cannot follow sin²: the function documents where the
     * fitted form ends. It explains too little, so that a band of it would be of the raw sample.
     */
    @Test
    void theIshigamiFunctionIsBeyondTheFittedForm() {
        double[][] shares = LatinHypercube.shares(POINTS, 3, 1);
        double[] y =
                IntStream.range(0, POINTS).mapToDouble(i -> ishigami(shares[i])).toArray();
        double mean =
                IntStream.range(0, POINTS).mapToDouble(i -> y[i]).average().orElseThrow();
        double variance = IntStream.range(0, POINTS)
                .mapToDouble(i -> (y[i] - mean) * (y[i] - mean))
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(3.5, within(0.1));
        assertThat(variance).isCloseTo(13.844588, within(0.5));
        FittedForm form = FittedForm.of(LatinHypercube.normal(POINTS, 3, 1), y);
        assertThat(form.explained()).isLessThan(0.95);
    }

    private static double ishigami(double[] share) {
        double[] x = IntStream.range(0, 3)
                .mapToDouble(j -> Math.PI * (2 * share[j] - 1))
                .toArray();
        return Math.sin(x[0]) + 7 * Math.pow(Math.sin(x[1]), 2) + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]);
    }

    /** A sum of squares of normals has the exact indices 2 c² / Σ 2 c² that the form reads off. */
    @Test
    void aSumOfSquaresHasItsIndices() {
        double[][] z = LatinHypercube.normal(POINTS, 3, 2);
        double[] y = IntStream.range(0, POINTS)
                .mapToDouble(i -> z[i][0] + 0.5 * z[i][1] * z[i][1] + 0.25 * z[i][2])
                .toArray();
        FittedForm form = FittedForm.of(z, y);
        double all = 1 + 2 * 0.25 + 0.0625;
        assertThat(form.share(0)).isCloseTo(1 / all, within(1e-9));
        assertThat(form.share(1)).isCloseTo(0.5 / all, within(1e-9));
        assertThat(form.share(2)).isCloseTo(0.0625 / all, within(1e-9));
    }
}
