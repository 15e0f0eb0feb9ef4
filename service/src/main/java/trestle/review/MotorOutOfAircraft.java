package trestle.review;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.joint.Climbing;
import trestle.joint.Drive;
import trestle.motorout.MotorOut;
import trestle.motorout.MotorOutTask;
import trestle.propulsion.DeadPropeller;
import trestle.propulsion.DeadPropellerState;
import trestle.propulsion.OperatingPoint;
import trestle.propulsion.PowerTrain;
import trestle.propulsion.PropulsionSystem;

/**
 * An aircraft of several motors whose outermost stops in the climb: those that go on find a pack that sags less.
 *
 * @param task what was asked
 * @param out what is left
 * @param throttleFraction throttle that gives the thrust that is held, where full throttle is not, 0 to 1
 * @param foldedDragN drag of the dead propeller were it folded, N
 */
public record MotorOutOfAircraft(MotorOutTask task, MotorOut out, OptionalDouble throttleFraction, double foldedDragN) {
    /**
     * Works it out.
     *
     * @param aircraft the aircraft
     * @param climbing it at its safe climb speed
     * @param air the air
     * @param thrust its propulsion
     * @param cgArmM centre of gravity, m aft of the datum; empty where it is not known
     * @return what is left; empty where there is one motor, or a place is not known
     */
    static Optional<MotorOutOfAircraft> of(
            Aircraft aircraft, Climbing climbing, AirState air, ThrustSource thrust, OptionalDouble cgArmM) {
        if (!(aircraft.propulsion() instanceof Propulsion.ByParts parts)
                || parts.motorCount() < 2
                || parts.motorLateralM().isEmpty()
                || aircraft.fin().isEmpty()
                || cgArmM.isEmpty()
                || thrust.drive().isEmpty()) {
            return Optional.empty();
        }
        double finArmM = aircraft.fin().get().quarterChordArmM() - cgArmM.getAsDouble();
        if (!(finArmM > 0)) {
            return Optional.empty();
        }
        double density = air.densityKgPerM3();
        double airspeed = climbing.airspeedMPerS();
        int turning = parts.motorCount() - 1;
        PowerTrain train = train(thrust.drive().get(), turning, air);
        double pressurePa = density * airspeed * airspeed / 2;
        MotorOutTask task = new MotorOutTask(
                aircraft.fin().get(),
                finArmM,
                parts.motorLateralM().getAsDouble(),
                turning,
                v -> Math.max(0, train.thrustN(v).orElse(0)) / turning,
                deadN(parts, parts.deadPropeller(), airspeed, air) / pressurePa,
                airspeed,
                climbing.dragN(),
                climbing.weightN(),
                density);
        MotorOut out = MotorOut.of(task);
        return Optional.of(new MotorOutOfAircraft(
                task, out, throttle(out, turning, train), deadN(parts, DeadPropellerState.FOLDED, airspeed, air)));
    }

    private static PowerTrain train(Drive all, int turning, AirState air) {
        PropulsionSystem system = all.task().system();
        return PowerTrain.of(
                new PropulsionSystem(system.motor(), system.controller(), system.propeller(), turning, system.supply()),
                air,
                Optional.of(all.train()));
    }

    /** A dead propeller that pulls a little in its model drags nothing. */
    private static double deadN(Propulsion.ByParts parts, DeadPropellerState state, double airspeed, AirState air) {
        return Math.max(
                0,
                DeadPropeller.of(parts.propeller(), parts.motor(), state, airspeed, air)
                        .dragN());
    }

    private static OptionalDouble throttle(MotorOut out, int turning, PowerTrain train) {
        return out.held() || out.largestThrustN() == 0
                ? OptionalDouble.empty()
                : train.holding(turning * out.largestThrustN(), out.airspeedMPerS()).stream()
                        .mapToDouble(OperatingPoint::throttleFraction)
                        .findFirst();
    }
}
