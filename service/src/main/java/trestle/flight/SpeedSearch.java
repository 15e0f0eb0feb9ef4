package trestle.flight;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** The argument at which a cost is least: a grid finds the valley, Brent's method its bottom. */
final class SpeedSearch {
    /** Fine enough to find the valley of a cost with kinks; a smooth cost has one valley. */
    static final int FINE = 32;

    /** Enough for a cost that is known to have one valley. */
    static final int COARSE = 10;

    /** Near the root of a double's precision, beyond which a least value cannot be told. */
    private static final double RELATIVE_ACCURACY = 1e-9;

    private static final int MOST_EVALUATIONS = 200;

    private SpeedSearch() {}

    /**
     * Where a cost is least.
     *
     * @param cost the cost; infinite where the argument is not possible
     * @param least lower end of the search, above 0
     * @param greatest upper end
     * @param points of the grid, {@link #FINE} or {@link #COARSE}
     * @return the argument; empty where the range is empty or the cost is infinite throughout
     */
    static OptionalDouble leastAt(DoubleUnaryOperator cost, double least, double greatest, int points) {
        if (!(greatest >= least)) {
            return OptionalDouble.empty();
        }
        double step = (greatest - least) / (points - 1);
        double best = least;
        double bestCost = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points; i++) {
            double argument = i == points - 1 ? greatest : least + i * step;
            double there = cost.applyAsDouble(argument);
            if (there < bestCost) {
                best = argument;
                bestCost = there;
            }
        }
        if (Double.isInfinite(bestCost)) {
            return OptionalDouble.empty();
        }
        double refined =
                step > 0 ? refine(cost, Math.max(least, best - step), best, Math.min(greatest, best + step)) : best;
        return OptionalDouble.of(cost.applyAsDouble(refined) < bestCost ? refined : best);
    }

    private static double refine(DoubleUnaryOperator cost, double least, double start, double greatest) {
        return new BrentOptimizer(RELATIVE_ACCURACY, Double.MIN_NORMAL)
                .optimize(
                        GoalType.MINIMIZE,
                        new MaxEval(MOST_EVALUATIONS),
                        new UnivariateObjectiveFunction(cost::applyAsDouble),
                        new SearchInterval(least, greatest, start))
                .getPoint();
    }

    /**
     * An upper end beyond which a cost that falls and then rises has begun to rise.
     *
     * @param cost the cost
     * @param start where to begin, above 0
     * @param cap never beyond this
     * @return the upper end
     */
    static double upperEnd(DoubleUnaryOperator cost, double start, double cap) {
        double end = start;
        while (end < cap && cost.applyAsDouble(end) < cost.applyAsDouble(end / 1.5)) {
            end *= 1.5;
        }
        return Math.min(end, cap);
    }
}
