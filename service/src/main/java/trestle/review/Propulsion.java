package trestle.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.flight.PropulsiveEfficiency;
import trestle.launch.LinearThrust;
import trestle.massbalance.Item;
import trestle.numeric.Guard;
import trestle.propulsion.Controller;
import trestle.propulsion.DeadPropellerState;
import trestle.propulsion.Motor;
import trestle.propulsion.Propeller;

/** What turns pack power into thrust. */
public sealed interface Propulsion {
    /**
     * How long full throttle is held in one go.
     *
     * @return time, s, above 0
     */
    double fullThrottleDurationS();

    /**
     * By efficiencies that someone knows.
     *
     * @param efficiency from pack power to thrust power
     * @param fullThrottlePowerW power at full throttle, all motors together, W; empty where not
     *     measured
     * @param thrust at full throttle; empty where not measured
     * @param fullThrottleDurationS how long full throttle is held in one go, s, above 0
     */
    record ByEfficiency(
            PropulsiveEfficiency efficiency,
            OptionalDouble fullThrottlePowerW,
            Optional<LinearThrust> thrust,
            double fullThrottleDurationS)
            implements Propulsion {
        /** Checks the physics. */
        public ByEfficiency {
            fullThrottlePowerW.ifPresent(value -> Guard.positive("fullThrottlePowerW", value));
            Guard.positive("fullThrottleDurationS", fullThrottleDurationS);
        }
    }

    /**
     * By its parts, all motors alike on the one pack.
     *
     * @param motorCount motors, 1 or more
     * @param motor the motor
     * @param controller its controller
     * @param propeller its propeller
     * @param items those parts that have a mass and a place, for the balance
     * @param unplacedMassKg mass of the motors, all together, where they have no place, kg; 0 where they do
     * @param fullThrottleDurationS how long full throttle is held in one go, s, above 0
     * @param motorLateralM from the centre line to the outermost motor, m, above 0; empty where it is not known
     * @param deadPropeller what the propeller of a motor that has stopped does
     */
    record ByParts(
            int motorCount,
            Motor motor,
            Controller controller,
            Propeller propeller,
            List<Item> items,
            double unplacedMassKg,
            double fullThrottleDurationS,
            OptionalDouble motorLateralM,
            DeadPropellerState deadPropeller)
            implements Propulsion {
        /** Checks the physics and copies the list. */
        public ByParts {
            Guard.notNegative("unplacedMassKg", unplacedMassKg);
            items = List.copyOf(items);
            Guard.positive("fullThrottleDurationS", fullThrottleDurationS);
        }
    }
}
