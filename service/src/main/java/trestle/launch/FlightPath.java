package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import trestle.flight.LevelFlight;

/**
 * From release to safe flight. State: height, forward airspeed, upward speed. Thrust and drag lie
 * along the path, lift across it.
 *
 * @param task the question
 * @param safeClimbSpeedMPerS safe climb speed, m/s
 */
record FlightPath(LaunchStallTask task, double safeClimbSpeedMPerS) implements OrdinaryDifferentialEquation {
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

    /** What became of it after release. */
    record End(LaunchOutcome outcome, double heightLostM, OptionalDouble timeToSafeSpeedS) {}

    End from(Release release) {
        double releaseM = task.launch().releaseHeightM();
        double[] start = {releaseM, release.forwardAirspeedMPerS(), release.upwardSpeedMPerS()};
        if (safety(start) >= 0) {
            return new End(LaunchOutcome.SAFE_SPEED, 0, OptionalDouble.of(0));
        }
        double[] lowestM = {releaseM};
        ODEStateAndDerivative end = Motion.run(
                this,
                start,
                LONGEST_S,
                state -> lowestM[0] = Math.min(lowestM[0], state[0]),
                List.of(state -> state[0], this::safety));
        double[] state = end.getPrimaryState();
        double heightLostM = releaseM - Math.max(0, lowestM[0]);
        if (state[0] <= ARRIVED) {
            return new End(LaunchOutcome.GROUND, releaseM, OptionalDouble.empty());
        }
        return safety(state) >= -ARRIVED
                ? new End(LaunchOutcome.SAFE_SPEED, heightLostM, OptionalDouble.of(end.getTime()))
                : new End(LaunchOutcome.TOO_SLOW, heightLostM, OptionalDouble.empty());
    }

    /** Not below 0 at the safe climb speed on a level or climbing path. */
    private double safety(double[] state) {
        double speed = Math.hypot(state[1], state[2]) / safeClimbSpeedMPerS - 1;
        double path = Math.atan2(state[2], state[1]) + LEVEL_RAD;
        return Math.min(speed, path);
    }

    @Override
    public int getDimension() {
        return 3;
    }

    @Override
    public double[] computeDerivatives(double timeS, double[] state) {
        double massKg = task.airframe().massKg();
        double v = Math.max(LEAST_AIRSPEED_M_PER_S, Math.hypot(state[1], state[2]));
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
