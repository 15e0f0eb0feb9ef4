package trestle.endpoint.endurance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.flight.EnduranceTask;
import trestle.flight.PolarPower;
import trestle.joint.Drive;
import trestle.propulsion.DriveLimits;
import trestle.propulsion.PropulsionMatch;

/**
 * What is worked out about a flight.
 *
 * @param result the flight
 * @param match the drive at the airspeed asked for, else at that of best endurance, where it is described by its
 *     parts: its ratings hold in every flight
 */
public record EnduranceWork(EnduranceResult result, Optional<PropulsionMatch> match) {

    static EnduranceWork of(EnduranceReading read) {
        EnduranceResult result = Endurance.of(read.task());
        return new EnduranceWork(result, read.drive().flatMap(drive -> match(drive, read.task(), result)));
    }

    private static Optional<PropulsionMatch> match(Drive drive, EnduranceTask task, EnduranceResult result) {
        if (!(task.power() instanceof PolarPower polar)) {
            return Optional.empty();
        }
        OptionalDouble best = result.bestEndurance().stream()
                .mapToDouble(point -> point.airspeedMPerS())
                .findFirst();
        OptionalDouble cruise = task.airspeedMPerS().isPresent() ? task.airspeedMPerS() : best;
        return Optional.of(drive.match(drive.flown(
                task.airframe(),
                polar.polar(),
                cruise,
                DriveLimits.ofLift(task.airframe().maxLiftCoefficient()))));
    }
}
