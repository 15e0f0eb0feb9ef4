package trestle.joint;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.PropulsiveEfficiency;
import trestle.propulsion.EfficiencyMap;
import trestle.propulsion.PowerTrain;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionSystem;
import trestle.propulsion.PropulsionTask;

/**
 * Motor, controller and propeller as what turns pack power into the thrust of a flight.
 *
 * @param task the drive by itself
 * @param train the same, ready to be asked
 * @param efficiency its efficiency over airspeed and thrust
 */
public record Drive(PropulsionTask task, PowerTrain train, EfficiencyMap efficiency) implements PropulsiveEfficiency {

    /**
     * A drive in the air of a flight.
     *
     * @param system the drive
     * @param air the air
     * @return the drive
     */
    public static Drive of(PropulsionSystem system, AirState air) {
        PowerTrain train = PowerTrain.of(system, air);
        PropulsionTask byItself = new PropulsionTask(system, air, Optional.empty(), OptionalDouble.empty(), List.of());
        return new Drive(byItself, train, EfficiencyMap.of(train));
    }

    @Override
    public double fraction(double airspeedMPerS, double thrustN) {
        return efficiency.total(airspeedMPerS, thrustN);
    }

    /**
     * What there is to say of the drive by itself: ratings, range of the propeller model, choices.
     *
     * @return the match
     */
    public PropulsionMatch match() {
        return PropulsionMatch.of(task, train);
    }
}
