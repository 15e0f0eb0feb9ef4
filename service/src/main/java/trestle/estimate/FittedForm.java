package trestle.estimate;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * A result as a sum of one curve for each unknown: y = a + Σ b_j z_j + Σ c_j (z_j² − 1) + residual, by least squares.
 *
 * <p>The terms are uncorrelated over independent standard normal draws, so that each unknown's share of the variance
 * can be read off: (b_j² + 2 c_j²) over the sum of all and of the residual, the first-order index of Sobol (Saltelli et
 * al., Global Sensitivity Analysis, 2008; from memory).
 */
public final class FittedForm {
    private final double intercept;
    private final double[] linear;
    private final double[] square;
    private final double[] residuals;
    private final double residualVariance;
    private final double explained;

    private FittedForm(double[] coefficients, int unknowns, boolean squares, double[] residuals, double explained) {
        this.intercept = coefficients[0];
        this.linear = Arrays.copyOfRange(coefficients, 1, 1 + unknowns);
        this.square = squares ? Arrays.copyOfRange(coefficients, 1 + unknowns, 1 + 2 * unknowns) : new double[unknowns];
        int free = Math.max(1, residuals.length - coefficients.length);
        double sum = Arrays.stream(residuals).map(r -> r * r).sum();
        this.residualVariance = sum / free;
        double scale = Math.sqrt((double) residuals.length / free);
        this.residuals = Arrays.stream(residuals).map(r -> r * scale).toArray();
        this.explained = explained;
    }

    /**
     * Fits the form.
     *
     * @param z one row a point, one column an unknown
     * @param y the result at each point
     * @return the form; without squares where there are too few points for them
     */
    public static FittedForm of(double[][] z, double[] y) {
        int unknowns = z.length == 0 ? 0 : z[0].length;
        boolean squares = z.length >= 2 * (2 * unknowns + 1);
        double[][] terms = new double[z.length][];
        for (int i = 0; i < z.length; i++) {
            terms[i] = terms(z[i], squares);
        }
        Array2DRowRealMatrix design = new Array2DRowRealMatrix(terms, false);
        RealVector result = new ArrayRealVector(y, false);
        RealVector coefficients = new QRDecomposition(design).getSolver().solve(result);
        double[] residuals = result.subtract(design.operate(coefficients)).toArray();
        return new FittedForm(coefficients.toArray(), unknowns, squares, residuals, explained(y, residuals));
    }

    private static double[] terms(double[] z, boolean squares) {
        double[] terms = new double[1 + z.length * (squares ? 2 : 1)];
        terms[0] = 1;
        for (int j = 0; j < z.length; j++) {
            terms[1 + j] = z[j];
            if (squares) {
                terms[1 + z.length + j] = z[j] * z[j] - 1;
            }
        }
        return terms;
    }

    /** R²; a result that does not move is explained whole. */
    private static double explained(double[] y, double[] residuals) {
        double mean = Arrays.stream(y).average().orElse(0);
        double total = Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum();
        double left = Arrays.stream(residuals).map(r -> r * r).sum();
        return total == 0 ? 1 : 1 - left / total;
    }

    /**
     * The curve without its residual.
     *
     * @param z one draw an unknown
     * @return the result there
     */
    public double at(double[] z) {
        double sum = intercept;
        for (int j = 0; j < linear.length; j++) {
            sum += linear[j] * z[j] + square[j] * (z[j] * z[j] - 1);
        }
        return sum;
    }

    /** R²: how much of the sample's variance the curves explain, 0 to 1. */
    public double explained() {
        return explained;
    }

    /** What the curves leave over at each point of the sample, scaled to what a new point would show. */
    public double residual(int point) {
        return residuals[point % residuals.length];
    }

    /**
     * Share of an unknown in the variance.
     *
     * @param unknown its column
     * @return 0 to 1; 0 where nothing moves
     */
    public double share(int unknown) {
        double all = residualVariance;
        for (int j = 0; j < linear.length; j++) {
            all += variance(j);
        }
        return all == 0 ? 0 : variance(unknown) / all;
    }

    private double variance(int j) {
        return linear[j] * linear[j] + 2 * square[j] * square[j];
    }
}
