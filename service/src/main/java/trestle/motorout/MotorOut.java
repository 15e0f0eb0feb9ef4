package trestle.motorout;

import java.util.OptionalDouble;
import trestle.numeric.Root;

/**
 * What the outermost of several motors leaves behind when it stops.
 *
 * @param airspeedMPerS safe climb speed, at which it is judged, m/s
 * @param thrustN thrust of the motor opposite at full throttle, N
 * @param deadDragN drag of the dead propeller, N
 * @param yawNm what yaws at full throttle, N m
 * @param controlNm what full rudder holds, or the fin at 10° of sideslip where it has none, N m
 * @param rudderNeededRad deflection that holds full throttle, rad, which may be more than there is; empty without a rudder
 * @param minimumControlMPerS airspeed from which full throttle is held, m/s; empty where none up to 100 m/s does
 * @param largestThrustN largest thrust of the motor opposite that is held, N; 0 where not even the dead drag is
 * @param bankNeededRad bank towards the motor opposite that carries the side force, rad, at the thrust that is held
 * @param trimDragN drag of the fin's side force, N
 * @param climbRateMPerS rate of climb with all that turn at the thrust that is held, m/s; below 0 where it sinks
 */
public record MotorOut(
        double airspeedMPerS,
        double thrustN,
        double deadDragN,
        double yawNm,
        double controlNm,
        OptionalDouble rudderNeededRad,
        OptionalDouble minimumControlMPerS,
        double largestThrustN,
        double bankNeededRad,
        double trimDragN,
        double climbRateMPerS) {
    private static final double SLOWEST_M_PER_S = 1;
    private static final double FASTEST_M_PER_S = 100;
    private static final double ACCURACY_M_PER_S = 1e-6;

    /** Span efficiency of a fin. Common practice, no source. */
    private static final double FIN_EFFICIENCY = 0.8;

    /**
     * Works it out.
     *
     * @param task the aircraft
     * @return the answer
     */
    public static MotorOut of(MotorOutTask task) {
        double speed = task.airspeedMPerS();
        double pressurePa = task.pressurePa(speed);
        double fullN = task.thrustN().applyAsDouble(speed);
        double deadN = task.deadAreaM2() * pressurePa;
        double yawNm = task.yawNm(speed);
        double controlNm = task.controlNm(speed);
        double largestN = Math.max(0, controlNm / task.lateralM() - deadN);
        double heldN = Math.min(fullN, largestN);
        double heldNm = Math.min(yawNm, controlNm);
        double sideN = heldNm / task.finArmM();
        double trimN = trimDragN(task.fin(), sideN, pressurePa);
        double spareN = task.turningCount() * heldN - task.dragN() - deadN - trimN;
        return new MotorOut(
                speed,
                fullN,
                deadN,
                yawNm,
                controlNm,
                task.fin().rudderChordFraction().isPresent()
                        ? OptionalDouble.of(task.fin().rudderDeflectionRad() * yawNm / controlNm)
                        : OptionalDouble.empty(),
                Root.between(
                        v -> task.controlNm(v) - task.yawNm(v), SLOWEST_M_PER_S, FASTEST_M_PER_S, ACCURACY_M_PER_S),
                largestN,
                Math.asin(Math.min(1, sideN / task.weightN())),
                trimN,
                speed * Math.max(-1, Math.min(1, spareN / task.weightN())));
    }

    /** {@code (N/l)² / (q π e h²)}, shared by the fins. */
    private static double trimDragN(Fin fin, double sideN, double pressurePa) {
        double heightM2 = fin.count() * fin.heightM() * fin.heightM();
        return sideN * sideN / (pressurePa * Math.PI * FIN_EFFICIENCY * heightM2);
    }

    /** Whether full throttle can be held at the safe climb speed. */
    public boolean held() {
        return yawNm <= controlNm;
    }
}
