package trestle.charging;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * Where the charger takes its energy from.
 *
 * @param maxPowerW greatest power that it gives, W; empty: more than the charger takes
 * @param battery a battery in the field; empty: the mains or a generator
 */
public record ChargeSupply(OptionalDouble maxPowerW, Optional<FieldBattery> battery) {
    /** Checks the physics. */
    public ChargeSupply {
        maxPowerW.ifPresent(it -> Guard.positive("maxPowerW", it));
    }
}
