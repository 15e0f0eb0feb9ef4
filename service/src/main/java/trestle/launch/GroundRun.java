package trestle.launch;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import trestle.flight.LevelFlight;

/**
 * From standstill to release. Along ground or ramp {@code m' dv/dt = F − D − μ (m g cos θ − L) − m
 * g sin θ}: F is the thrust on a dolly, the cord's pull on a ramp, and m' the mass that moves.
 *
 * @param task the question
 * @param headwindMPerS wind against the run, m/s; below 0 for a tailwind
 */
record GroundRun(LaunchAndClimbTask task, double headwindMPerS) {
    /** A run that has not ended by then is longer than any field. */
    private static final double LONGEST_S = 30;

    /** Share of a spring's mass that moves with its end, [2]. */
    private static final double MOVING_SHARE_OF_CORD = 1.0 / 3;

    /** On a ramp the aircraft lies near its attitude of no lift. */
    private static final double RAMP_LIFT_COEFFICIENT = 0;

    private static final double ARRIVED = 1e-6;

    Release release() {
        Launch launch = task.launch();
        if (launch instanceof Launch.Hand hand) {
            return Release.along(
                    true, hand.releaseSpeedMPerS(), hand.angleRad(), headwindMPerS, OptionalDouble.empty(), 0);
        }
        if (launch instanceof Launch.Catapult catapult) {
            double v = catapult.releaseSpeedMPerS();
            return Release.along(
                    true,
                    v,
                    catapult.angleRad(),
                    headwindMPerS,
                    OptionalDouble.of(catapult.railLengthM()),
                    2 * catapult.railLengthM() / v);
        }
        return launch instanceof Launch.Bungee bungee ? bungee(bungee) : dolly((Launch.Dolly) launch);
    }

    private Release dolly(Launch.Dolly dolly) {
        double stallMPerS = task.airframe().stallSpeedMPerS(task.air().densityKgPerM3());
        double liftOffMPerS = dolly.liftOff().airspeedMPerS(stallMPerS) - headwindMPerS;
        if (liftOffMPerS <= 0) {
            return Release.along(true, 0, 0, headwindMPerS, OptionalDouble.of(0), 0);
        }
        double massKg = task.airframe().massKg() + dolly.dollyMassKg();
        DoubleBinaryOperator forceN = (s, v) -> {
            double airspeed = Math.max(0, v + headwindMPerS);
            return task.thrust().thrustN(airspeed)
                    - resistanceN(
                            airspeed,
                            massKg * GRAVITY_M_PER_S2,
                            dolly.rollLiftCoefficient(),
                            dolly.rollingResistance());
        };
        double quickestPerS = FlightPath.quickestPerS(
                task.airframe(),
                task.air().densityKgPerM3(),
                dolly.liftOff().airspeedMPerS(stallMPerS),
                task.polar().dragCoefficient(dolly.rollLiftCoefficient()));
        ODEStateAndDerivative end = Motion.of(LONGEST_S, quickestPerS)
                .run(
                        run(forceN, massKg),
                        new double[] {0, 0},
                        (timeS, state) -> {},
                        List.of(state -> state[1] - liftOffMPerS));
        double v = end.getPrimaryState()[1];
        return Release.along(
                v >= liftOffMPerS - ARRIVED,
                v,
                0,
                headwindMPerS,
                OptionalDouble.of(end.getPrimaryState()[0]),
                end.getTime());
    }

    private Release bungee(Launch.Bungee bungee) {
        double massKg = task.airframe().massKg();
        double weightN = massKg * GRAVITY_M_PER_S2;
        double sine = Math.sin(bungee.angleRad());
        double cosine = Math.cos(bungee.angleRad());
        // Ends at the slack cord, so the pull needs no bound there: a kink would cost accuracy.
        DoubleBinaryOperator forceN =
                (s, v) -> bungee.energyReturnFraction() * bungee.stiffnessNPerM() * (bungee.stretchM() - s)
                        - weightN * sine
                        - resistanceN(
                                Math.max(0, v + headwindMPerS),
                                weightN * cosine,
                                RAMP_LIFT_COEFFICIENT,
                                bungee.slidingFriction());
        double movingKg = massKg + MOVING_SHARE_OF_CORD * bungee.cordMassKg();
        double quarterS = Math.PI / 2 * Math.sqrt(movingKg / (bungee.energyReturnFraction() * bungee.stiffnessNPerM()));
        // What has not arrived after a whole oscillation never does.
        Motion motion = Motion.smooth(4 * quarterS, quarterS / 2);
        ODEStateAndDerivative end = motion.run(
                run(forceN, movingKg),
                new double[] {0, 0},
                (timeS, state) -> {},
                List.of(state -> state[0] - bungee.stretchM()));
        double s = end.getPrimaryState()[0];
        return Release.along(
                s >= bungee.stretchM() - ARRIVED,
                end.getPrimaryState()[1],
                bungee.angleRad(),
                headwindMPerS,
                OptionalDouble.of(s),
                end.getTime());
    }

    /** Drag and friction against the run. */
    private double resistanceN(double airspeedMPerS, double weightN, double liftCoefficient, double friction) {
        double qs = LevelFlight.dynamicPressurePa(task.air().densityKgPerM3(), airspeedMPerS)
                * task.airframe().wingAreaM2();
        return qs * task.polar().dragCoefficient(liftCoefficient)
                + friction * Math.max(0, weightN - qs * liftCoefficient);
    }

    /** State: way and speed. Friction holds at a standstill but does not push back. */
    private static OrdinaryDifferentialEquation run(DoubleBinaryOperator forceN, double massKg) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double timeS, double[] state) {
                double v = Math.max(0, state[1]);
                double acceleration = forceN.applyAsDouble(state[0], v) / massKg;
                return new double[] {v, state[1] <= 0 ? Math.max(0, acceleration) : acceleration};
            }
        };
    }
}
