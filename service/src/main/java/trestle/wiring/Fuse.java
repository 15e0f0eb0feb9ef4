package trestle.wiring;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A blade fuse in a run, as far as it is known.
 *
 * @param ratedCurrentA rated current, A; empty where the right one is asked for
 * @param ratedVoltageV highest voltage that it may break, V; empty where not known
 * @param fullVoltageV highest voltage at the supply, V; empty where not known
 * @param breakingCurrentA highest current that it can break, A; empty where not known
 * @param sourceResistanceOhm resistance before it, pack included, Ω; empty where not known
 */
public record Fuse(
        OptionalDouble ratedCurrentA,
        OptionalDouble ratedVoltageV,
        OptionalDouble fullVoltageV,
        OptionalDouble breakingCurrentA,
        OptionalDouble sourceResistanceOhm) {
    /** Checks that nothing is null. */
    public Fuse {
        Guard.present("ratedCurrentA", ratedCurrentA);
        Guard.present("ratedVoltageV", ratedVoltageV);
        Guard.present("fullVoltageV", fullVoltageV);
        Guard.present("breakingCurrentA", breakingCurrentA);
        Guard.present("sourceResistanceOhm", sourceResistanceOhm);
    }

    /**
     * Current of a short right behind the fuse, where nothing but the source limits it.
     *
     * @param supplyVoltageV voltage at the supply, V, where no full voltage is known
     * @return current, A; empty where the resistance before the fuse is not known
     */
    public OptionalDouble shortCircuitA(double supplyVoltageV) {
        double voltageV = fullVoltageV.orElse(supplyVoltageV);
        return sourceResistanceOhm.stream().map(ohm -> voltageV / ohm).findFirst();
    }
}
