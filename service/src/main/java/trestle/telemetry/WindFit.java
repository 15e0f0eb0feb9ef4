package trestle.telemetry;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The wind from ground velocities in many directions: they lie on a circle about the wind whose radius is the airspeed.
 * Kåsa's algebraic fit starts it; Gauss and Newton's steps then make {@code Σ (|v − w| − a)²} least, with a the airspeed
 * recorded, or one unknown airspeed.
 *
 * @param wind the wind; empty where the directions flown do not show it
 * @param coverageRad directions flown through the air: the full circle less the widest sector that was left out, rad
 */
public record WindFit(Optional<Wind> wind, double coverageRad) {
    /** Directions that must be flown: a third of the circle. Common practice, no source. */
    public static final double LEAST_COVERAGE_RAD = Math.toRadians(120);

    /**
     * Without a recorded airspeed, noise about one velocity is a circle too, a small and fuzzy one: a real one is larger
     * than this, m/s.
     */
    private static final double LEAST_AIRSPEED_M_PER_S = 3;

    /** And its points lie nearer to it than this share of its radius, or the airspeed was not one. */
    private static final double MOST_SCATTER = 0.1;

    private static final int LEAST_SAMPLES = 20;
    private static final int STEPS = 30;
    private static final double CLOSE_M_PER_S = 1e-9;
    private static final double SLOWEST_M_PER_S = 1e-6;

    /**
     * Fits the wind.
     *
     * @param north ground velocities to the north, m/s
     * @param east ground velocities to the east, m/s
     * @param airspeed airspeed of each, m/s; empty: one that is not known
     * @return the fit
     */
    static WindFit of(double[] north, double[] east, double[] airspeed) {
        boolean known = airspeed.length > 0;
        if (north.length < LEAST_SAMPLES) {
            return new WindFit(Optional.empty(), 0);
        }
        double[] fit;
        double[] residuals;
        double variance;
        try {
            fit = start(north, east);
            for (int i = 0; i < STEPS && step(fit, north, east, airspeed) > CLOSE_M_PER_S; i++) {}
            residuals = residuals(fit, north, east, airspeed);
            double mean = Arrays.stream(residuals).map(r -> r * r).sum() / (north.length - fit.length);
            RealMatrix covariance = new LUDecomposition(normal(fit, north, east, known))
                    .getSolver()
                    .getInverse()
                    .scalarMultiply(mean * Statistics.inflation(residuals));
            variance = alongWind(covariance, fit);
        } catch (MathRuntimeException allOneWay) {
            return new WindFit(Optional.empty(), 0);
        }
        double scatter =
                Math.sqrt(Arrays.stream(residuals).map(r -> r * r).average().orElse(0));
        double coverage = coverage(fit, north, east);
        boolean circle = known || fit[2] > LEAST_AIRSPEED_M_PER_S && scatter < MOST_SCATTER * fit[2];
        boolean seen = circle && coverage >= LEAST_COVERAGE_RAD && Double.isFinite(fit[0]) && Double.isFinite(variance);
        return new WindFit(
                seen
                        ? Optional.of(new Wind(fit[0], fit[1], Math.sqrt(Math.max(0, variance)), scatter, known))
                        : Optional.empty(),
                Double.isFinite(coverage) ? coverage : 0);
    }

    /** Kåsa: least squares of {@code n² + e² = 2 wn n + 2 we e + c}. */
    private static double[] start(double[] north, double[] east) {
        RealMatrix a = MatrixUtils.createRealMatrix(3, 3);
        ArrayRealVector b = new ArrayRealVector(3);
        for (int i = 0; i < north.length; i++) {
            double[] row = {2 * north[i], 2 * east[i], 1};
            add(a, b, row, north[i] * north[i] + east[i] * east[i]);
        }
        double[] x = new LUDecomposition(a).getSolver().solve(b).toArray();
        return new double[] {x[0], x[1], Math.sqrt(Math.max(SLOWEST_M_PER_S, x[2] + x[0] * x[0] + x[1] * x[1]))};
    }

    private static double step(double[] fit, double[] north, double[] east, double[] airspeed) {
        boolean known = airspeed.length > 0;
        int size = known ? 2 : 3;
        RealMatrix a = MatrixUtils.createRealMatrix(size, size);
        ArrayRealVector b = new ArrayRealVector(size);
        double[] residuals = residuals(fit, north, east, airspeed);
        for (int i = 0; i < north.length; i++) {
            add(a, b, slope(fit, north[i], east[i], known), -residuals[i]);
        }
        double[] change = new LUDecomposition(a).getSolver().solve(b).toArray();
        for (int i = 0; i < size; i++) {
            fit[i] += change[i];
        }
        return Arrays.stream(change).map(Math::abs).max().orElse(0);
    }

    private static RealMatrix normal(double[] fit, double[] north, double[] east, boolean known) {
        int size = known ? 2 : 3;
        RealMatrix a = MatrixUtils.createRealMatrix(size, size);
        ArrayRealVector unused = new ArrayRealVector(size);
        for (int i = 0; i < north.length; i++) {
            add(a, unused, slope(fit, north[i], east[i], known), 0);
        }
        return a;
    }

    private static void add(RealMatrix a, ArrayRealVector b, double[] row, double value) {
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < row.length; j++) {
                a.addToEntry(i, j, row[i] * row[j]);
            }
            b.addToEntry(i, row[i] * value);
        }
    }

    private static double[] slope(double[] fit, double north, double east, boolean known) {
        double distance = Math.max(SLOWEST_M_PER_S, Math.hypot(north - fit[0], east - fit[1]));
        double n = (fit[0] - north) / distance;
        double e = (fit[1] - east) / distance;
        return known ? new double[] {n, e} : new double[] {n, e, -1};
    }

    private static double[] residuals(double[] fit, double[] north, double[] east, double[] airspeed) {
        double[] residuals = new double[north.length];
        Arrays.setAll(
                residuals,
                i -> Math.hypot(north[i] - fit[0], east[i] - fit[1]) - (airspeed.length > 0 ? airspeed[i] : fit[2]));
        return residuals;
    }

    private static double alongWind(RealMatrix covariance, double[] fit) {
        double speed = Math.hypot(fit[0], fit[1]);
        double n = speed == 0 ? Math.sqrt(0.5) : fit[0] / speed;
        double e = speed == 0 ? Math.sqrt(0.5) : fit[1] / speed;
        return n * n * covariance.getEntry(0, 0)
                + 2 * n * e * covariance.getEntry(0, 1)
                + e * e * covariance.getEntry(1, 1);
    }

    private static double coverage(double[] fit, double[] north, double[] east) {
        double[] directions = new double[north.length];
        Arrays.setAll(directions, i -> Math.atan2(east[i] - fit[1], north[i] - fit[0]));
        Arrays.sort(directions);
        double widest = directions[0] + 2 * Math.PI - directions[directions.length - 1];
        for (int i = 1; i < directions.length; i++) {
            widest = Math.max(widest, directions[i] - directions[i - 1]);
        }
        return 2 * Math.PI - widest;
    }
}
