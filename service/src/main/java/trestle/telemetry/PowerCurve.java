package trestle.telemetry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * The power curve of steady stretches, by least squares with Huber's weights.
 *
 * @param fit the curve; empty where the stretches cannot tell it
 * @param mean power at the mean airspeed; empty without stretches
 * @param why why there is no curve; {@code SEEN} where there is one
 */
public record PowerCurve(Optional<PowerFit> fit, Optional<PowerAtSpeed> mean, Reason why) {
    /** Why a curve is not told. */
    public enum Reason {
        /** It is. */
        SEEN,
        /** No airspeed was recorded and none follows from the wind. */
        NO_AIRSPEED,
        /** The mass is not known. */
        NO_MASS,
        /** Too few steady stretches. */
        FEW,
        /** All at one airspeed. */
        ONE_SPEED,
        /** Parts of the power cannot be told apart, or one of them comes out negative. */
        INDISTINCT
    }

    /** Span of airspeeds over their mean below which one speed cannot tell parasite from induced drag. */
    static final double LEAST_SPAN = 0.15;

    /** Beyond this condition number the parts are not told apart. */
    private static final double WORST_CONDITION = 1e4;

    /** Huber's bound in deviations: 95 % efficient on normal noise. */
    private static final double HUBER = 1.345;

    private static final int ROUNDS = 30;
    private static final int LEAST_STRETCHES = 8;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    static PowerCurve none(Reason why) {
        return new PowerCurve(Optional.empty(), Optional.empty(), why);
    }

    /**
     * Fits the curve.
     *
     * @param stretches steady flight
     * @param massKg mass flown, kg
     * @param densityKgPerM3 density of the air, kg/m³
     * @param systemsPowerW power that does not depend on airspeed, W
     * @return the curve, or why there is none
     */
    static PowerCurve of(List<SteadyStretch> stretches, double massKg, double densityKgPerM3, double systemsPowerW) {
        if (stretches.size() < LEAST_STRETCHES) {
            return none(Reason.FEW);
        }
        double[] v =
                stretches.stream().mapToDouble(SteadyStretch::airspeedMPerS).toArray();
        double[] p = stretches.stream().mapToDouble(SteadyStretch::powerW).toArray();
        Optional<PowerAtSpeed> mean = Optional.of(mean(v, p));
        double span = Statistics.quantile(v, HIGH) - Statistics.quantile(v, LOW);
        if (span < LEAST_SPAN * mean.get().airspeedMPerS()) {
            return new PowerCurve(Optional.empty(), mean, Reason.ONE_SPEED);
        }
        Optional<PowerFit> fit = fit(v, p, massKg, densityKgPerM3, systemsPowerW);
        return new PowerCurve(fit, mean, fit.isPresent() ? Reason.SEEN : Reason.INDISTINCT);
    }

    private static PowerAtSpeed mean(double[] v, double[] p) {
        double airspeed = Arrays.stream(v).average().orElseThrow();
        double power = Arrays.stream(p).average().orElseThrow();
        double[] residuals = Arrays.stream(p).map(it -> it - power).toArray();
        double variance = Arrays.stream(residuals).map(r -> r * r).sum() / (p.length - 1);
        return new PowerAtSpeed(airspeed, power, Math.sqrt(variance * Statistics.inflation(residuals) / p.length));
    }

    private static Optional<PowerFit> fit(double[] v, double[] p, double mass, double density, double systems) {
        double[][] x = new double[v.length][];
        Arrays.setAll(x, i -> new double[] {density * v[i] * v[i] * v[i], mass * mass / (density * v[i])});
        double[] y = Arrays.stream(p).map(it -> it - systems).toArray();
        if (condition(x) > WORST_CONDITION) {
            return Optional.empty();
        }
        try {
            return told(x, y, v, p, mass, systems);
        } catch (MathRuntimeException notToldApart) {
            return Optional.empty();
        }
    }

    private static Optional<PowerFit> told(double[][] x, double[] y, double[] v, double[] p, double mass, double p0) {
        double[] weights = new double[y.length];
        Arrays.fill(weights, 1);
        double[] k = solve(x, y, weights);
        for (int round = 0; round < ROUNDS; round++) {
            double[] residuals = residuals(x, y, k);
            double bound = HUBER * Statistics.robustDeviation(residuals);
            for (int i = 0; i < weights.length; i++) {
                double size = Math.abs(residuals[i]);
                weights[i] = bound == 0 || size <= bound ? 1 : bound / size;
            }
            k = solve(x, y, weights);
        }
        if (!(k[0] > 0 && k[1] > 0)) {
            return Optional.empty();
        }
        double[] residuals = residuals(x, y, k);
        double left = 0;
        for (int i = 0; i < residuals.length; i++) {
            left += weights[i] * residuals[i] * residuals[i];
        }
        double variance = left / (y.length - 2) * Statistics.inflation(residuals);
        RealMatrix c =
                new LUDecomposition(normal(x, weights)).getSolver().getInverse().scalarMultiply(variance);
        double middle = Arrays.stream(p).average().orElseThrow();
        double all = Arrays.stream(p).map(it -> (it - middle) * (it - middle)).sum();
        double unexplained = Arrays.stream(residuals).map(r -> r * r).sum();
        double s0 = Math.sqrt(c.getEntry(0, 0));
        double s1 = Math.sqrt(c.getEntry(1, 1));
        return Optional.of(new PowerFit(
                p0,
                k[0],
                k[1],
                mass,
                s0 / k[0],
                s1 / k[1],
                s0 == 0 || s1 == 0 ? 0 : Math.max(-1, Math.min(1, c.getEntry(0, 1) / (s0 * s1))),
                all == 0 ? 0 : Math.max(0, 1 - unexplained / all),
                Math.sqrt(unexplained / y.length),
                y.length,
                Arrays.stream(v).min().orElseThrow(),
                Arrays.stream(v).max().orElseThrow()));
    }

    private static double[] solve(double[][] x, double[] y, double[] weights) {
        double[][] weighted = new double[x.length][];
        double[] right = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            double root = Math.sqrt(weights[i]);
            weighted[i] = new double[] {root * x[i][0], root * x[i][1]};
            right[i] = root * y[i];
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(right, weighted);
        return regression.estimateRegressionParameters();
    }

    private static double[] residuals(double[][] x, double[] y, double[] k) {
        double[] residuals = new double[y.length];
        Arrays.setAll(residuals, i -> y[i] - k[0] * x[i][0] - k[1] * x[i][1]);
        return residuals;
    }

    private static RealMatrix normal(double[][] x, double[] weights) {
        RealMatrix a = MatrixUtils.createRealMatrix(2, 2);
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < 4; j++) {
                a.addToEntry(j / 2, j % 2, weights[i] * x[i][j / 2] * x[i][j % 2]);
            }
        }
        return a;
    }

    /** Condition number of the columns, each brought to length one. */
    private static double condition(double[][] x) {
        double[] lengths = new double[2];
        for (double[] row : x) {
            lengths[0] += row[0] * row[0];
            lengths[1] += row[1] * row[1];
        }
        double[][] scaled = new double[x.length][];
        Arrays.setAll(scaled, i -> new double[] {x[i][0] / Math.sqrt(lengths[0]), x[i][1] / Math.sqrt(lengths[1])});
        return new SingularValueDecomposition(MatrixUtils.createRealMatrix(scaled)).getConditionNumber();
    }
}
