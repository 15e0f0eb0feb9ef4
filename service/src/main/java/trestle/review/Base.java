package trestle.review;

import java.util.Optional;
import trestle.atmosphere.AirState;
import trestle.battery.Pack;
import trestle.massbalance.Planform;
import trestle.rails.RailBudget;
import trestle.rails.RailTask;
import trestle.rails.Rails;
import trestle.rails.Supply;

/**
 * What no wire of an aircraft changes.
 *
 * @param aircraft the aircraft
 * @param planform of its wing
 * @param air of its flight
 * @param railTask its rails; empty without one
 * @param rails what they take; empty without one
 */
record Base(
        Aircraft aircraft, Planform planform, AirState air, Optional<RailTask> railTask, Optional<RailBudget> rails) {

    static Base of(Aircraft aircraft) {
        Optional<RailTask> railTask = railTask(aircraft);
        return new Base(
                aircraft,
                Planform.of(aircraft.wing()),
                aircraft.flight().conditions().air(),
                railTask,
                railTask.map(Rails::of));
    }

    /** Regulators see the packs from full down to where the controllers stop. */
    private static Optional<RailTask> railTask(Aircraft aircraft) {
        if (aircraft.rails().isEmpty()) {
            return Optional.empty();
        }
        Pack pack = new Pack(aircraft.segments(), 0);
        double lowestV = Math.min(aircraft.cutoff().packVoltageV(pack), pack.fullVoltageV());
        Supply supply = new Supply(pack.fullVoltageV(), lowestV);
        return Optional.of(new RailTask(supply, aircraft.rails()));
    }

    /** Power for everything but the motors, W. */
    double systemsPowerW() {
        return aircraft.systemsPowerW() + rails.map(RailBudget::systemsPowerW).orElse(0.0);
    }
}
