package trestle.joint;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.flight.Airframe;
import trestle.flight.DragPolar;
import trestle.flight.PropulsiveEfficiency;
import trestle.propulsion.CruiseDemand;
import trestle.propulsion.DriveLimits;
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
     * @param like another drive, whose propeller may be the same
     * @return the drive
     */
    public static Drive of(PropulsionSystem system, AirState air, Optional<Drive> like) {
        PowerTrain train = PowerTrain.of(system, air, like.map(Drive::train));
        PropulsionTask byItself = new PropulsionTask(system, air, Optional.empty(), OptionalDouble.empty(), List.of());
        return new Drive(byItself, train, EfficiencyMap.of(train));
    }

    @Override
    public double fraction(double airspeedMPerS, double thrustN) {
        return efficiency.total(airspeedMPerS, thrustN);
    }

    /**
     * The drive as one aircraft flies it.
     *
     * @param airframe mass, wing and lift
     * @param polar drag polar on the wing area
     * @param cruiseMPerS cruise airspeed, m/s, above 0; empty where there is none
     * @param limits what else holds the drive back
     * @return what is to be matched
     */
    public PropulsionTask flown(Airframe airframe, DragPolar polar, OptionalDouble cruiseMPerS, DriveLimits limits) {
        AirState air = task.air();
        LevelDrag drag = new LevelDrag(polar, airframe.massKg(), airframe.wingAreaM2(), air.densityKgPerM3());
        return new PropulsionTask(
                task.system(),
                air,
                cruiseMPerS.stream().mapToObj(v -> new CruiseDemand(v, drag)).findFirst(),
                OptionalDouble.of(airframe.massKg()),
                List.of(),
                limits);
    }

    /**
     * What there is to say of the drive in a flight: ratings, range of the propeller model, choices.
     *
     * @param flown the drive as an aircraft flies it
     * @return the match
     */
    public PropulsionMatch match(PropulsionTask flown) {
        return PropulsionMatch.of(flown, train);
    }
}
