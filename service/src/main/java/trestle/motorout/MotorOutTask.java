package trestle.motorout;

import java.util.function.DoubleUnaryOperator;
import trestle.numeric.Guard;

/**
 * An aircraft whose outermost motor stops in the climb.
 *
 * @param fin its fins
 * @param finArmM from the centre of gravity to the fin, m, above 0
 * @param lateralM from the centre line to that motor, m, above 0
 * @param turningCount motors that go on, 1 or more
 * @param thrustN thrust of one of them at full throttle over airspeed, N
 * @param deadAreaM2 drag of the dead propeller over the dynamic pressure, m², not negative
 * @param airspeedMPerS safe climb speed, m/s, above 0
 * @param dragN drag of level flight there, N
 * @param weightN weight, N, above 0
 * @param densityKgPerM3 density of the air, kg/m³, above 0
 */
public record MotorOutTask(
        Fin fin,
        double finArmM,
        double lateralM,
        int turningCount,
        DoubleUnaryOperator thrustN,
        double deadAreaM2,
        double airspeedMPerS,
        double dragN,
        double weightN,
        double densityKgPerM3) {
    /** Checks the physics. */
    public MotorOutTask {
        Guard.present("fin", fin);
        Guard.positive("finArmM", finArmM);
        Guard.positive("lateralM", lateralM);
        Guard.positive("turningCount", turningCount);
        Guard.present("thrustN", thrustN);
        Guard.notNegative("deadAreaM2", deadAreaM2);
        Guard.positive("airspeedMPerS", airspeedMPerS);
        Guard.positive("weightN", weightN);
        Guard.positive("densityKgPerM3", densityKgPerM3);
    }

    double pressurePa(double atMPerS) {
        return densityKgPerM3 * atMPerS * atMPerS / 2;
    }

    /** What yaws at full throttle, N m. */
    double yawNm(double atMPerS) {
        return (thrustN.applyAsDouble(atMPerS) + deadAreaM2 * pressurePa(atMPerS)) * lateralM;
    }

    /** What holds against it, N m. */
    double controlNm(double atMPerS) {
        return fin.controlNm(pressurePa(atMPerS), finArmM);
    }
}
