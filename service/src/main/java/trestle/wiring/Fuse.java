package trestle.wiring;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A blade fuse in a run, as far as it is known.
 *
 * @param ratedCurrentA rated current, A; empty where the right one is asked for
 * @param ratedVoltageV highest voltage that it may break, V; empty where not known
 * @param breakingCurrentA highest current that it can break, A; empty where not known
 */
public record Fuse(OptionalDouble ratedCurrentA, OptionalDouble ratedVoltageV, OptionalDouble breakingCurrentA) {
    /** Checks that nothing is null. */
    public Fuse {
        Guard.present("ratedCurrentA", ratedCurrentA);
        Guard.present("ratedVoltageV", ratedVoltageV);
        Guard.present("breakingCurrentA", breakingCurrentA);
    }
}
