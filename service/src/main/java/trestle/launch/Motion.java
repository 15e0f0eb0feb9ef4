package trestle.launch;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;

/** Integrates a motion until one of several stops or a time. */
final class Motion {
    /**
     * Fixed steps take the kinks of a launch (lift limit, motor start) without complaint. At 10 ms
     * smooth motion is good to micrometres; a motor start is placed to within a quarter of a step.
     */
    private static final double STEP_S = 0.01;

    private static final double EVENT_ACCURACY_S = 1e-9;

    private Motion() {}

    /**
     * Integrates.
     *
     * @param equation the motion
     * @param start state at time 0
     * @param longestS when to give up, s
     * @param eachStep told the state after every step
     * @param stops functions of the state that stop the motion where they cross 0
     * @return the end
     */
    static ODEStateAndDerivative run(
            OrdinaryDifferentialEquation equation,
            double[] start,
            double longestS,
            Consumer<double[]> eachStep,
            List<ToDoubleFunction<double[]>> stops) {
        ClassicalRungeKuttaIntegrator integrator = new ClassicalRungeKuttaIntegrator(STEP_S);
        integrator.addStepHandler(step -> eachStep.accept(step.getCurrentState().getPrimaryState()));
        for (ToDoubleFunction<double[]> stop : stops) {
            integrator.addEventDetector(new Stop(stop));
        }
        return integrator.integrate(equation, new ODEState(0, start), longestS);
    }

    private record Stop(ToDoubleFunction<double[]> crossing) implements ODEEventDetector {
        private static final int MOST_ITERATIONS = 100;
        private static final int SOLVER_ORDER = 5;

        @Override
        public double g(ODEStateAndDerivative state) {
            return crossing.applyAsDouble(state.getPrimaryState());
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(STEP_S);
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
