package trestle.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.atmosphere.AirState;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * What {@link Endurance} is asked.
 *
 * @param airframe the aircraft
 * @param power where its power comes from
 * @param store what feeds it
 * @param air the air
 * @param headwindMPerS wind against the flight, m/s; below 0 for a tailwind
 * @param reserveFraction share of the usable energy that is kept, 0 to below 1
 * @param airspeedMPerS an airspeed to report on, m/s; empty for none
 * @param legs legs in order; empty for none
 * @param pack the pack that is carried, for the question of the best mass; empty to leave it out
 */
public record EnduranceTask(
        Airframe airframe,
        PowerSource power,
        EnergyStore store,
        AirState air,
        double headwindMPerS,
        double reserveFraction,
        OptionalDouble airspeedMPerS,
        List<Leg> legs,
        Optional<CarriedPack> pack) {
    /** Checks the physics. */
    public EnduranceTask {
        Guard.present("airframe", airframe);
        Guard.present("power", power);
        Guard.present("store", store);
        Guard.present("air", air);
        Guard.within("headwindMPerS", headwindMPerS, -100, 100);
        Guard.within("reserveFraction", reserveFraction, 0, 0.95);
        airspeedMPerS.ifPresent(v -> Guard.positive("airspeedMPerS", v));
        legs = List.copyOf(legs);
        if (pack.isPresent() && pack.get().massKg() >= airframe.massKg()) {
            throw new ImpossibleValue(
                    "pack",
                    "a pack of "
                            + pack.get().massKg()
                            + " kg leaves nothing of a take-off mass of "
                            + airframe.massKg()
                            + " kg");
        }
    }
}
