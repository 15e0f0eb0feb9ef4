package trestle.launch;

import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import trestle.numeric.ImpossibleValue;

/**
 * Integrates a motion until one of several stops or a time.
 *
 * @param longestS when to give up, s
 * @param checkS longest time between two looks at the stops, s
 * @param method how
 */
record Motion(double longestS, double checkS, Supplier<ODEIntegrator> method) {
    /**
     * Fixed steps take the kinks of a launch (lift limit, motor start) without complaint. At 10 ms
     * smooth motion is good to micrometres; a motor start is placed to within a quarter of a step.
     */
    static final double LONGEST_STEP_S = 0.01;

    /** Bounds the work of one motion, whatever is asked. */
    private static final int MOST_STEPS = 60_000;

    private static final double EVENT_ACCURACY_S = 1e-9;

    /** Of a smooth motion, of way and speed alike: far below what any number of a launch is known to. */
    private static final double ACCURACY = 1e-8;

    /** Shortest step of a smooth motion over the longest. */
    private static final double SHORTEST_STEP_RATIO = 1e-9;

    /** Told of the motion after each of its steps. */
    @FunctionalInterface
    interface Follower {
        void at(double timeS, double[] state);
    }

    /**
     * A motion whose quickest change is known: steps of half of its time constant, at most 10 ms. Fixed steps are
     * unstable beyond 2.8 of it.
     *
     * @param longestS when to give up, s
     * @param quickestPerS inverse of the shortest time constant, 1/s
     * @return the motion
     */
    static Motion of(double longestS, double quickestPerS) {
        double stable = 0.5 / quickestPerS;
        double stepS = Math.max(longestS / MOST_STEPS, Math.min(LONGEST_STEP_S, stable));
        return new Motion(longestS, stepS, () -> new ClassicalRungeKuttaIntegrator(stepS));
    }

    /**
     * A motion without kinks on its way, by steps as long as its accuracy lets them be.
     *
     * @param longestS when to give up, s
     * @param longestStepS longest step, s: short enough that no stop is passed twice within it
     * @return the motion
     */
    static Motion smooth(double longestS, double longestStepS) {
        return new Motion(
                longestS,
                longestStepS,
                () -> new DormandPrince853Integrator(
                        SHORTEST_STEP_RATIO * longestStepS, longestStepS, ACCURACY, ACCURACY));
    }

    /**
     * Integrates.
     *
     * @param equation the motion
     * @param start state at time 0
     * @param follower told the state after every step
     * @param stops functions of the state that stop the motion where they cross 0
     * @return the end
     * @throws ImpossibleValue where the numbers are beyond those of any aircraft
     */
    ODEStateAndDerivative run(
            OrdinaryDifferentialEquation equation,
            double[] start,
            Follower follower,
            List<ToDoubleFunction<double[]>> stops) {
        ODEIntegrator integrator = method.get();
        integrator.addStepHandler(step -> follower.at(
                step.getCurrentState().getTime(), step.getCurrentState().getPrimaryState()));
        for (ToDoubleFunction<double[]> stop : stops) {
            integrator.addEventDetector(new Stop(stop, checkS));
        }
        try {
            return integrator.integrate(equation, new ODEState(0, start), longestS);
        } catch (MathRuntimeException notIntegrable) {
            throw new ImpossibleValue(
                    "launch", "mass, wing, drag and thrust are so far apart that no path can be followed");
        }
    }

    private record Stop(ToDoubleFunction<double[]> crossing, double checkS) implements ODEEventDetector {
        private static final int MOST_ITERATIONS = 100;
        private static final int SOLVER_ORDER = 5;

        @Override
        public double g(ODEStateAndDerivative state) {
            return crossing.applyAsDouble(state.getPrimaryState());
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(checkS);
        }

        @Override
        public int getMaxIterationCount() {
            return MOST_ITERATIONS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, EVENT_ACCURACY_S, 0, SOLVER_ORDER);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.STOP;
        }
    }
}
