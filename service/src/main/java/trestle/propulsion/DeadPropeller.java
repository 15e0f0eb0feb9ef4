package trestle.propulsion;

import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.numeric.Guard;
import trestle.numeric.Root;

/**
 * Drag of a propeller whose motor has stopped.
 *
 * <p>Windmilling: it turns as fast as its torque overcomes that of the motor, {@code Q(n) = -Qr}: {@code Qr = I0/K} where
 * the controller lets it turn, {@code I0/K + ω/(K² R)} where it brakes, K in rad/s per volt. That is the model of a driven
 * propeller carried on, and was never checked braking. Stopped {@code D/q = 0.8 σ A}, folded {@code 0.1 σ A}, with the
 * solidity σ of the mean blade (D. Raymer, Aircraft Design, from memory).
 *
 * @param dragN drag, N
 * @param rotationRadPerS rotation, rad/s; 0 where it stands
 */
public record DeadPropeller(double dragN, double rotationRadPerS) {
    private static final double STOPPED = 0.8;
    private static final double FOLDED = 0.1;

    /** From the fastest rotation looked at down, by this each step: the fastest that holds is where it turns. */
    private static final double STEP_RATIO = 0.96;

    /** So much faster than without lift no wind turns a propeller. */
    private static final double FASTEST_RATIO = 1.5;

    /** So much slower it is called standing. */
    private static final double SLOWEST_RATIO = 0.05;

    private static final double ACCURACY_RATIO = 1e-9;

    /**
     * The drag.
     *
     * @param propeller the propeller
     * @param motor its motor
     * @param state what it does
     * @param airspeedMPerS airspeed, m/s, above 0
     * @param air the air
     * @return drag and rotation
     */
    public static DeadPropeller of(
            Propeller propeller, Motor motor, DeadPropellerState state, double airspeedMPerS, AirState air) {
        Guard.positive("airspeedMPerS", airspeedMPerS);
        double k = motor.speedConstantRadPerSPerV();
        return switch (state) {
            case STOPPED -> standing(propeller, STOPPED, airspeedMPerS, air);
            case FOLDED -> standing(propeller, FOLDED, airspeedMPerS, air);
            case WINDMILLING -> turning(propeller, motor.noLoadCurrentA() / k, 0, airspeedMPerS, air);
            case BRAKED ->
                turning(propeller, motor.noLoadCurrentA() / k, 1 / (k * k * motor.resistanceOhm()), airspeedMPerS, air);
        };
    }

    /**
     * One that turns against a torque; where the wind cannot turn it, it stands.
     *
     * @param propeller the propeller
     * @param torqueNm torque that it turns against, N m, not negative
     * @param torquePerRadPerS more of it for each rad/s, N m s, not negative
     * @param airspeedMPerS airspeed, m/s
     * @param air the air
     */
    static DeadPropeller turning(
            Propeller propeller, double torqueNm, double torquePerRadPerS, double airspeedMPerS, AirState air) {
        Turning turning = new Turning(
                BladeElementModel.of(propeller), propeller.diameterM(), torqueNm, torquePerRadPerS, airspeedMPerS, air);
        OptionalDouble revPerS = turning.revPerS();
        return revPerS.isEmpty()
                ? standing(propeller, STOPPED, airspeedMPerS, air)
                : new DeadPropeller(-turning.thrustN(revPerS.getAsDouble()), 2 * Math.PI * revPerS.getAsDouble());
    }

    private static DeadPropeller standing(Propeller propeller, double share, double airspeedMPerS, AirState air) {
        double pressurePa = air.densityKgPerM3() * airspeedMPerS * airspeedMPerS / 2;
        double discM2 = Math.PI * propeller.diameterM() * propeller.diameterM() / 4;
        double solidity = BladeElementModel.of(propeller).solidity();
        return new DeadPropeller(share * solidity * discM2 * pressurePa, 0);
    }

    private record Turning(
            BladeElementModel blade,
            double diameterM,
            double torqueNm,
            double torquePerRadPerS,
            double airspeedMPerS,
            AirState air) {
        /** The fastest rotation at which the wind's torque is that of the motor; empty where there is none. */
        private OptionalDouble revPerS() {
            double noLift = airspeedMPerS / (blade.noLiftAdvanceRatio() * diameterM);
            double high = FASTEST_RATIO * noLift;
            for (double low = high * STEP_RATIO; low > SLOWEST_RATIO * noLift; low *= STEP_RATIO) {
                if (spareNm(low) < 0) {
                    return Root.between(this::spareNm, low, high, high * ACCURACY_RATIO);
                }
                high = low;
            }
            return OptionalDouble.empty();
        }

        /** What is missing for the wind to turn it faster, N m; below 0 where it does. */
        private double spareNm(double revPerS) {
            double power = at(revPerS).power();
            double scaleN = scaleN(revPerS);
            return power * scaleN * diameterM / (2 * Math.PI) + torqueNm + torquePerRadPerS * 2 * Math.PI * revPerS;
        }

        private double thrustN(double revPerS) {
            return at(revPerS).thrust() * scaleN(revPerS);
        }

        private PropellerCoefficients at(double revPerS) {
            return blade.at(
                    airspeedMPerS / (revPerS * diameterM), BladeElementModel.rotationReynolds(diameterM, air, revPerS));
        }

        private double scaleN(double revPerS) {
            return air.densityKgPerM3() * revPerS * revPerS * Math.pow(diameterM, 4);
        }
    }
}
