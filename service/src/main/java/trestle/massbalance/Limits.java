package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What mass and CG are held against.
 *
 * @param maximumTakeoffMassKg maximum take-off mass, kg, above 0; empty for none
 * @param forward forward limit of the CG; empty for none
 * @param aft aft limit of the CG; empty for none
 * @param lateralM maximum distance of the CG from the plane of symmetry, m, 0 or more; empty for
 *     none
 */
public record Limits(
        OptionalDouble maximumTakeoffMassKg,
        Optional<Station> forward,
        Optional<Station> aft,
        OptionalDouble lateralM) {
    /** Checks the physics. */
    public Limits {
        maximumTakeoffMassKg.ifPresent(value -> Guard.positive("maximumTakeoffMassKg", value));
        Guard.present("forward", forward);
        Guard.present("aft", aft);
        lateralM.ifPresent(value -> Guard.notNegative("lateralM", value));
    }
}
