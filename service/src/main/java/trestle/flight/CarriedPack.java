package trestle.flight;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * The part of the take-off mass that stores the energy.
 *
 * @param massKg its mass, kg
 * @param takeoffMassLimitKg maximum take-off mass, kg; empty where there is no limit
 */
public record CarriedPack(double massKg, OptionalDouble takeoffMassLimitKg) {
    /** Checks the physics. */
    public CarriedPack {
        Guard.positive("massKg", massKg);
        takeoffMassLimitKg.ifPresent(limit -> Guard.positive("takeoffMassLimitKg", limit));
    }
}
