package trestle.review;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.flight.PropulsiveEfficiency;
import trestle.flight.SpeedPoint;
import trestle.joint.Drive;
import trestle.joint.PackStore;
import trestle.joint.PackVoltage;
import trestle.launch.Thrust;
import trestle.propulsion.DriveLimits;
import trestle.propulsion.OperatingPoint;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;

/**
 * The propulsion on the packs of one round of the review.
 *
 * @param efficiency from pack power to thrust power, over airspeed and thrust
 * @param fullThrottlePowerW power at full throttle at rest, W; empty where it is not known
 * @param thrust at full throttle over airspeed; empty where it is not known
 * @param drive the drive; empty where only efficiencies are known
 */
public record ThrustSource(
        PropulsiveEfficiency efficiency,
        OptionalDouble fullThrottlePowerW,
        Optional<Thrust> thrust,
        Optional<Drive> drive) {

    public static ThrustSource of(Propulsion propulsion, PackStore store, AirState air, Optional<ThrustSource> like) {
        if (propulsion instanceof Propulsion.ByEfficiency known) {
            return new ThrustSource(
                    known.efficiency(),
                    known.fullThrottlePowerW(),
                    known.thrust().map(thrust -> thrust),
                    Optional.empty());
        }
        Propulsion.ByParts parts = (Propulsion.ByParts) propulsion;
        PropulsionSystem system = new PropulsionSystem(
                parts.motor(),
                parts.controller(),
                parts.propeller(),
                parts.motorCount(),
                PackVoltage.supply(store.pack(), Optional.of(store.cutoff()), store.surroundings()));
        Drive drive = Drive.of(system, air, like.flatMap(ThrustSource::drive));
        OptionalDouble fullW = drive.train().atFullThrottle(0).stream()
                .mapToDouble(OperatingPoint::electricalPowerW)
                .findFirst();
        return new ThrustSource(drive, fullW, Optional.of(drive.efficiency()::fullThrustN), Optional.of(drive));
    }

    /** The match at cruise; empty where only efficiencies are known. */
    public Optional<DriveMatch> match(
            Airframe airframe, DragPolar polar, Optional<SpeedPoint> cruise, DriveLimits limits) {
        OptionalDouble airspeed =
                cruise.stream().mapToDouble(SpeedPoint::airspeedMPerS).findFirst();
        return drive.map(known -> {
            PropulsionTask task = known.flown(airframe, polar, airspeed, limits);
            return new DriveMatch(task, known.match(task));
        });
    }
}
