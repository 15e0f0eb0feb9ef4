package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import trestle.flight.Airframe;
import trestle.flight.LevelFlight;

/**
 * From release to the climb speed. State: height, forward airspeed, upward speed. Thrust and drag lie
 * along the path, lift across it.
 *
 * @param task the question
 * @param climbSpeedMPerS airspeed of the climb, m/s
 */
record FlightPath(LaunchAndClimbTask task, double climbSpeedMPerS) implements OrdinaryDifferentialEquation {
    /** The launch is over one way or the other by then. */
    static final double LONGEST_S = 10;

    /** Lift is used up to this share of the greatest, so that a gust does not stall the wing. */
    static final double USED_SHARE_OF_LIFT = 0.9;

    /** How fast the pilot brings the path level: common practice, no source. */
    private static final double LEVELLING_S = 0.5;

    /** A path within 1° below level no longer sinks. */
    private static final double LEVEL_RAD = Math.toRadians(1);

    /** Below this airspeed the direction of the path means nothing. */
    private static final double LEAST_AIRSPEED_M_PER_S = 1e-3;

    private static final double ARRIVED = 1e-6;

    /** What became of it after release, and its way there. */
    record End(LaunchOutcome outcome, double heightLostM, OptionalDouble timeToClimbSpeedS, List<Moment> path) {}

    /** Moments of the path closer together than this are not kept, s. */
    private static final double KEPT_EVERY_S = 0.99 * Motion.LONGEST_STEP_S;

    End from(Release release) {
        double releaseM = task.launch().releaseHeightM();
        double[] start = {releaseM, release.forwardAirspeedMPerS(), release.upwardSpeedMPerS()};
        List<Moment> path = new ArrayList<>(List.of(moment(0, start)));
        if (arrival(start) >= 0) {
            return new End(LaunchOutcome.CLIMB_SPEED_REACHED, 0, OptionalDouble.of(0), path);
        }
        double[] lowestM = {releaseM};
        ODEStateAndDerivative end = motion(release.airspeedMPerS())
                .run(
                        this,
                        start,
                        (timeS, state) -> {
                            lowestM[0] = Math.min(lowestM[0], state[0]);
                            if (timeS - path.get(path.size() - 1).timeS() >= KEPT_EVERY_S) {
                                path.add(moment(timeS, state));
                            }
                        },
                        List.of(state -> state[0], this::arrival));
        double[] state = end.getPrimaryState();
        path.add(moment(end.getTime(), state));
        double heightLostM = releaseM - Math.max(0, lowestM[0]);
        if (state[0] <= ARRIVED) {
            return new End(LaunchOutcome.GROUND, releaseM, OptionalDouble.empty(), path);
        }
        return arrival(state) >= -ARRIVED
                ? new End(LaunchOutcome.CLIMB_SPEED_REACHED, heightLostM, OptionalDouble.of(end.getTime()), path)
                : new End(LaunchOutcome.TOO_SLOW, heightLostM, OptionalDouble.empty(), path);
    }

    private static Moment moment(double timeS, double[] state) {
        return new Moment(timeS, Math.max(0, state[0]), speed(state));
    }

    /** Speeds of an aircraft neither overflow nor vanish when squared, which a library's root guards against. */
    private static double speed(double[] state) {
        return Math.sqrt(state[1] * state[1] + state[2] * state[2]);
    }

    private Motion motion(double airspeedMPerS) {
        double lift = USED_SHARE_OF_LIFT * task.airframe().maxLiftCoefficient();
        double coefficient = Math.max(lift, task.polar().dragCoefficient(lift));
        double fastest = Math.max(airspeedMPerS, climbSpeedMPerS);
        return Motion.of(LONGEST_S, quickestPerS(task.airframe(), task.air().densityKgPerM3(), fastest, coefficient));
    }

    /**
     * How quickly a force of the air can change a speed: {@code ρ V S C / m}.
     *
     * @param airframe the aircraft
     * @param densityKgPerM3 density, kg/m³
     * @param airspeedMPerS fastest airspeed, m/s
     * @param coefficient greatest coefficient of the force
     * @return inverse of the time constant, 1/s
     */
    static double quickestPerS(Airframe airframe, double densityKgPerM3, double airspeedMPerS, double coefficient) {
        return densityKgPerM3 * airspeedMPerS * airframe.wingAreaM2() * coefficient / airframe.massKg();
    }

    /** Not below 0 at the climb speed on a level or climbing path. */
    private double arrival(double[] state) {
        double share = speed(state) / climbSpeedMPerS - 1;
        double path = Math.atan2(state[2], state[1]) + LEVEL_RAD;
        return Math.min(share, path);
    }

    @Override
    public int getDimension() {
        return 3;
    }

    @Override
    public double[] computeDerivatives(double timeS, double[] state) {
        double massKg = task.airframe().massKg();
        double v = Math.max(LEAST_AIRSPEED_M_PER_S, speed(state));
        double cosine = state[1] / v;
        double sine = state[2] / v;
        double path = Math.atan2(state[2], state[1]);
        double qs = LevelFlight.dynamicPressurePa(task.air().densityKgPerM3(), v)
                * task.airframe().wingAreaM2();
        double wantedN = massKg * (GRAVITY_M_PER_S2 * cosine - v * path / LEVELLING_S);
        double liftCoefficient = Math.max(
                0, Math.min(wantedN / qs, USED_SHARE_OF_LIFT * task.airframe().maxLiftCoefficient()));
        double liftN = qs * liftCoefficient;
        double alongN = thrustN(timeS, v) - qs * task.polar().dragCoefficient(liftCoefficient);
        return new double[] {
            state[2],
            (alongN * cosine - liftN * sine) / massKg,
            (alongN * sine + liftN * cosine) / massKg - GRAVITY_M_PER_S2
        };
    }

    private double thrustN(double timeS, double airspeedMPerS) {
        boolean running = task.launch() instanceof Launch.Dolly || timeS >= task.motorDelayS();
        return running ? task.thrust().thrustN(airspeedMPerS) : 0;
    }
}
