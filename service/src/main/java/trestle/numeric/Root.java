package trestle.numeric;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/** Roots of continuous functions within a bracket; no root is a result, never an exception. */
public final class Root {
    /** A bracketed solver halves its bracket at worst: 200 steps exhaust a double. */
    private static final int MOST_EVALUATIONS = 200;

    private static final int ORDER = 5;

    private Root() {}

    /**
     * The root of a function between two arguments.
     *
     * @param function continuous on the bracket
     * @param from lower end
     * @param to upper end, above {@code from}
     * @param accuracy how near to the root, in units of the argument, above 0
     * @return the root; empty where the function has the same sign at both ends
     */
    public static OptionalDouble between(DoubleUnaryOperator function, double from, double to, double accuracy) {
        double atFrom = function.applyAsDouble(from);
        double atTo = function.applyAsDouble(to);
        if (atFrom == 0) {
            return OptionalDouble.of(from);
        }
        if (atTo == 0) {
            return OptionalDouble.of(to);
        }
        if (!(atFrom * atTo < 0)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(new BracketingNthOrderBrentSolver(accuracy, ORDER)
                    .solve(MOST_EVALUATIONS, function::applyAsDouble, from, to));
        } catch (MathRuntimeException unsolved) {
            return OptionalDouble.empty();
        }
    }
}
