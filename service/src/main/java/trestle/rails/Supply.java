package trestle.rails;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * The pack as a regulator sees it.
 *
 * @param fullVoltageV voltage of the full pack at rest, V, above 0
 * @param lowestVoltageV lowest voltage under load, V, above 0, not above the full voltage
 */
public record Supply(double fullVoltageV, double lowestVoltageV) {
    /** Checks the physics. */
    public Supply {
        Guard.positive("fullVoltageV", fullVoltageV);
        Guard.positive("lowestVoltageV", lowestVoltageV);
        if (lowestVoltageV > fullVoltageV) {
            throw new ImpossibleValue("lowestVoltageV", "a pack's lowest voltage is not above its full voltage");
        }
    }
}
