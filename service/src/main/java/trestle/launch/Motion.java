package trestle.launch;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import trestle.numeric.ImpossibleValue;

/**
 * Integrates a motion until one of several stops or a time.
 *
 * @param longestS when to give up, s
 * @param stepS length of a step, s
 */
record Motion(double longestS, double stepS) {
    /**
     * Fixed steps take the kinks of a launch (lift limit, motor start) without complaint. At 10 ms
     * smooth motion is good to micrometres; a motor start is placed to within a quarter of a step.
     */
    static final double LONGEST_STEP_S = 0.01;

    /** Bounds the work of one motion, whatever is asked. */
    private static final int MOST_STEPS = 60_000;

    private static final double EVENT_ACCURACY_S = 1e-9;

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
        return new Motion(longestS, Math.max(longestS / MOST_STEPS, Math.min(LONGEST_STEP_S, stable)));
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
        ClassicalRungeKuttaIntegrator integrator = new ClassicalRungeKuttaIntegrator(stepS);
        integrator.addStepHandler(step -> follower.at(
                step.getCurrentState().getTime(), step.getCurrentState().getPrimaryState()));
        for (ToDoubleFunction<double[]> stop : stops) {
            integrator.addEventDetector(new Stop(stop, stepS));
        }
        try {
            return integrator.integrate(equation, new ODEState(0, start), longestS);
        } catch (MathRuntimeException notIntegrable) {
            throw new ImpossibleValue(
                    "launch", "mass, wing, drag and thrust are so far apart that no path can be followed");
        }
    }

    private record Stop(ToDoubleFunction<double[]> crossing, double stepS) implements ODEEventDetector {
        private static final int MOST_ITERATIONS = 100;
        private static final int SOLVER_ORDER = 5;

        @Override
        public double g(ODEStateAndDerivative state) {
            return crossing.applyAsDouble(state.getPrimaryState());
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(stepS);
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
