package trestle.launch;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.OrdinaryDifferentialEquation;

/** The way of the aircraft from release to the end of its launch. */
public final class LaunchPath {
    /**
     * A moment of it.
     *
     * @param timeS time from release, s
     * @param heightM height above the ground, m
     * @param airspeedMPerS airspeed, m/s
     */
    public record Moment(double timeS, double heightM, double airspeedMPerS) {}

    private LaunchPath() {}

    /**
     * Follows a launch from release to safe speed, to the ground, or for ten seconds.
     *
     * @param task the question
     * @param result its answer
     * @return moments a hundredth of a second apart; empty where it never left
     */
    public static List<Moment> of(LaunchStallTask task, LaunchStallResult result) {
        Release release = new GroundRun(task).release();
        if (!release.left()) {
            return List.of();
        }
        FlightPath flight = new FlightPath(task, result.safeClimbSpeedMPerS());
        double[] start = {task.launch().releaseHeightM(), release.forwardAirspeedMPerS(), release.upwardSpeedMPerS(), 0
        };
        List<Moment> path = new ArrayList<>(List.of(moment(start)));
        double longestS = result.launch().timeToSafeSpeedS().orElse(FlightPath.LONGEST_S);
        if (longestS > 0) {
            Motion.run(timed(flight), start, longestS, state -> path.add(moment(state)), List.of(state -> state[0]));
        }
        return path;
    }

    private static Moment moment(double[] state) {
        return new Moment(state[3], Math.max(0, state[0]), Math.hypot(state[1], state[2]));
    }

    /** The same motion with its time as one more state. */
    private static OrdinaryDifferentialEquation timed(FlightPath flight) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return flight.getDimension() + 1;
            }

            @Override
            public double[] computeDerivatives(double timeS, double[] state) {
                double[] rates = flight.computeDerivatives(timeS, state);
                return new double[] {rates[0], rates[1], rates[2], 1};
            }
        };
    }
}
