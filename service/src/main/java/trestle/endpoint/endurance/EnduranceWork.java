package trestle.endpoint.endurance;

import java.util.Optional;
import trestle.flight.Endurance;
import trestle.flight.EnduranceResult;
import trestle.joint.Drive;
import trestle.propulsion.PropulsionMatch;

/**
 * What is worked out about a flight.
 *
 * @param result the flight
 * @param match the drive by itself, where it is described by its parts: its ratings hold in every flight
 */
public record EnduranceWork(EnduranceResult result, Optional<PropulsionMatch> match) {

    static EnduranceWork of(EnduranceReading read) {
        return new EnduranceWork(Endurance.of(read.task()), read.drive().map(Drive::match));
    }
}
