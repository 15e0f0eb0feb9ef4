package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.battery.PackState;
import trestle.battery.PowerStep;
import trestle.flight.LegResult;
import trestle.flight.SpeedPoint;
import trestle.joint.Climbing;
import trestle.joint.Drive;
import trestle.joint.FullPower;
import trestle.joint.GoAroundTask;
import trestle.joint.PackStore;
import trestle.joint.SaggingDrive;
import trestle.numeric.Root;

/**
 * What an aircraft asks of its packs when it has to climb away once more at the end of its flight: at 1.3 stall speeds.
 *
 * @param plan the go-around
 * @param climbing the aircraft at that airspeed
 * @param store the packs at take-off
 * @param thrust the propulsion
 * @param systemsW power for everything but the motors, W
 */
record GoAroundOfAircraft(GoAroundPlan plan, Climbing climbing, PackStore store, ThrustSource thrust, double systemsW) {
    private static final double ACCURACY_RATIO = 1e-4;

    /**
     * After the legs of a flight, or where there are none after its cruise down to the reserve.
     *
     * @param cruise the cruise
     * @param legs legs in order
     * @return what is asked; empty where the full power is not known
     */
    Optional<GoAroundTask> after(SpeedPoint cruise, List<LegResult> legs) {
        double airspeed = climbing.airspeedMPerS();
        List<PowerStep> flown = legs.isEmpty()
                ? steps(cruise.powerW(), cruise.enduranceS())
                : legs.stream()
                        .flatMap(leg -> steps(leg.powerW(), leg.endS() - leg.startS()).stream())
                        .toList();
        return power(airspeed)
                .map(full -> new GoAroundTask(
                        store,
                        flown,
                        cruise.powerW(),
                        plan.chargeFraction(),
                        full,
                        systemsW,
                        powerW -> thrustN(powerW, airspeed),
                        climbing,
                        plan.holdS(),
                        plan.heightM()));
    }

    private static List<PowerStep> steps(double powerW, double durationS) {
        return durationS > 0 ? List.of(new PowerStep(powerW, durationS)) : List.of();
    }

    private Optional<FullPower> power(double airspeedMPerS) {
        if (plan.powerW().isPresent()) {
            double powerW = plan.powerW().getAsDouble();
            return Optional.of(FullPower.constant(powerW, thrustN(powerW, airspeedMPerS)));
        }
        if (thrust.drive().isPresent()) {
            Drive drive = thrust.drive().get();
            double restV = PackState.of(store.pack(), store.surroundings()).terminalVoltageV(0);
            return Optional.of(new SaggingDrive(drive.train(), restV, airspeedMPerS));
        }
        OptionalDouble known = thrust.fullThrottlePowerW();
        return known.isEmpty()
                ? Optional.empty()
                : Optional.of(FullPower.constant(
                        known.getAsDouble(),
                        thrust.thrust()
                                .map(curve -> curve.thrustN(airspeedMPerS))
                                .orElseGet(() -> thrustN(known.getAsDouble(), airspeedMPerS))));
    }

    /** Thrust of a power of the motors, by their efficiency at it; full thrust where the power is more than they take. */
    private double thrustN(double powerW, double airspeedMPerS) {
        double mostN = powerW / airspeedMPerS;
        return powerW > 0
                ? Root.between(
                                t -> t * airspeedMPerS
                                        - powerW * thrust.efficiency().fraction(airspeedMPerS, t),
                                mostN * ACCURACY_RATIO,
                                mostN,
                                mostN * ACCURACY_RATIO)
                        .orElse(0)
                : 0;
    }
}
