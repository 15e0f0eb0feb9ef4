package trestle.estimate;

import java.util.stream.LongStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Points that cover every unknown evenly: each column has one point in each of as many equal classes as there are points.
 *
 * <p>Source: M. McKay, R. Beckman, W. Conover, "A Comparison of Three Methods for Selecting Values of Input Variables
 * in the Analysis of Output from a Computer Code", Technometrics 21 (1979).
 */
public final class LatinHypercube {
    private static final NormalDistribution STANDARD = new NormalDistribution(0, 1);

    private LatinHypercube() {}

    /**
     * Shares in (0, 1).
     *
     * @param points how many points, at least 1
     * @param columns how many unknowns
     * @param seed the same seed gives the same points, on every machine
     * @return one row a point, one column an unknown
     */
    public static double[][] shares(int points, int columns, long seed) {
        return shares(points, LongStream.range(seed, seed + columns).toArray());
    }

    /**
     * Shares in (0, 1), each column from a seed of its own: what is drawn of one unknown does not hang on the others.
     *
     * @param points how many points, at least 1
     * @param seeds one an unknown, all different
     * @return one row a point, one column an unknown
     */
    public static double[][] shares(int points, long[] seeds) {
        double[][] sample = new double[points][seeds.length];
        for (int column = 0; column < seeds.length; column++) {
            RandomGenerator random = new Well19937c(seeds[column]);
            int[] classes = shuffled(points, random);
            for (int point = 0; point < points; point++) {
                sample[point][column] = (classes[point] + inside(random)) / points;
            }
        }
        return sample;
    }

    /**
     * Standard normal draws.
     *
     * @param points how many points, at least 1
     * @param columns how many unknowns
     * @param seed the same seed gives the same points, on every machine
     * @return one row a point, one column an unknown
     */
    public static double[][] normal(int points, int columns, long seed) {
        return deviates(shares(points, columns, seed));
    }

    /**
     * Standard normal draws, each column from a seed of its own.
     *
     * @param points how many points, at least 1
     * @param seeds one an unknown, all different
     * @return one row a point, one column an unknown
     */
    public static double[][] normal(int points, long[] seeds) {
        return deviates(shares(points, seeds));
    }

    private static double[][] deviates(double[][] shares) {
        for (double[] row : shares) {
            for (int column = 0; column < row.length; column++) {
                row[column] = STANDARD.inverseCumulativeProbability(row[column]);
            }
        }
        return shares;
    }

    /** Neither 0 nor 1, whose normal deviates are infinite. */
    private static double inside(RandomGenerator random) {
        double share = random.nextDouble();
        return share == 0 ? 0.5 : share;
    }

    private static int[] shuffled(int points, RandomGenerator random) {
        int[] classes = new int[points];
        for (int i = 0; i < points; i++) {
            int other = random.nextInt(i + 1);
            classes[i] = classes[other];
            classes[other] = i;
        }
        return classes;
    }
}
