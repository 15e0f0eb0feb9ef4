package trestle.review;

import static trestle.atmosphere.StandardAtmosphere.GRAVITY_M_PER_S2;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.joint.Drive;
import trestle.joint.LevelDrag;
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
 * @param dragN drag of level flight at that airspeed, N
 * @param foldedDragN drag of the dead propeller were it folded, N
 */
public record MotorOutOfAircraft(
        MotorOutTask task, MotorOut out, OptionalDouble throttleFraction, double dragN, double foldedDragN) {
    /** As the launch climbs. */
    private static final double CLIMB_IN_STALL_SPEEDS = 1.3;

    /**
     * Works it out.
     *
     * @param aircraft the aircraft
     * @param airframe with its mass
     * @param polar its drag
     * @param air the air
     * @param thrust its propulsion
     * @param cgArmM centre of gravity, m aft of the datum; empty where it is not known
     * @return what is left; empty where there is one motor, or a place is not known
     */
    static Optional<MotorOutOfAircraft> of(
            Aircraft aircraft,
            Airframe airframe,
            DragPolar polar,
            AirState air,
            ThrustSource thrust,
            OptionalDouble cgArmM) {
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
        double airspeed = CLIMB_IN_STALL_SPEEDS * airframe.stallSpeedMPerS(density);
        double dragN = new LevelDrag(polar, airframe.massKg(), airframe.wingAreaM2(), density).dragN(airspeed);
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
                dragN,
                airframe.massKg() * GRAVITY_M_PER_S2,
                density);
        MotorOut out = MotorOut.of(task);
        return Optional.of(new MotorOutOfAircraft(
                task,
                out,
                throttle(out, turning, train),
                dragN,
                deadN(parts, DeadPropellerState.FOLDED, airspeed, air)));
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
