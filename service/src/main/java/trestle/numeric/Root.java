package trestle.numeric;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/** Roots of continuous functions within a bracket; no root is a result, never an exception. */
public final class Root {
    /** A bracketed solver halves its bracket at worst: 200 steps exhaust a double. */
    private static final int MOST_EVALUATIONS = 200;

    private static final int ORDER = 5;

    /** How far from a guess the first look goes, over the guess, and how much further each next one. */
    private static final double FIRST_STEP_SHARE = 0.02;

    private static final double STEP_GROWTH = 4;

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
        return solved(function, from, atFrom, to, atTo, accuracy);
    }

    /**
     * The root of a rising function between two arguments, looked for from a guess outwards: where each value takes an
     * integration, a good guess spares most of them.
     *
     * @param function continuous and rising on the bracket
     * @param guess where the root may be
     * @param from lower end
     * @param to upper end, above {@code from}
     * @param accuracy how near to the root, in units of the argument, above 0
     * @return the root; empty where the function has the same sign at both ends
     */
    public static OptionalDouble near(
            DoubleUnaryOperator function, double guess, double from, double to, double accuracy) {
        double middle = Math.max(from, Math.min(to, guess));
        double atMiddle = function.applyAsDouble(middle);
        if (!(Math.abs(atMiddle) > 0)) {
            return atMiddle == 0 ? OptionalDouble.of(middle) : OptionalDouble.empty();
        }
        boolean up = atMiddle < 0;
        double inner = middle;
        double atInner = atMiddle;
        double end = up ? to : from;
        double step = Math.max(FIRST_STEP_SHARE * Math.abs(middle), 10 * accuracy);
        while (inner != end) {
            double outer = up ? Math.min(to, inner + step) : Math.max(from, inner - step);
            double atOuter = function.applyAsDouble(outer);
            if (atOuter == 0) {
                return OptionalDouble.of(outer);
            }
            if (atOuter > 0 == up) {
                return up
                        ? solved(function, inner, atInner, outer, atOuter, accuracy)
                        : solved(function, outer, atOuter, inner, atInner, accuracy);
            }
            inner = outer;
            atInner = atOuter;
            step *= STEP_GROWTH;
        }
        return OptionalDouble.empty();
    }

    /** The solver asks for both ends again, which are known. */
    private static OptionalDouble solved(
            DoubleUnaryOperator function, double from, double atFrom, double to, double atTo, double accuracy) {
        UnivariateFunction known = x -> x == from ? atFrom : x == to ? atTo : function.applyAsDouble(x);
        try {
            return OptionalDouble.of(
                    new BracketingNthOrderBrentSolver(accuracy, ORDER).solve(MOST_EVALUATIONS, known, from, to));
        } catch (MathRuntimeException unsolved) {
            return OptionalDouble.empty();
        }
    }
}
