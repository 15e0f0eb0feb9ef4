package trestle.joint;

import trestle.battery.Pack;
import trestle.battery.PackState;
import trestle.battery.Surroundings;
import trestle.numeric.Guard;
import trestle.units.Charge;

/**
 * A pack as what a plug or a short meets in its first moment: its voltage when full, and its resistance before anything
 * in its cells has had time to lag.
 *
 * @param fullVoltageV voltage when full, at rest, V, above 0
 * @param resistanceOhm resistance up to the end of its leads, Ω, above 0
 */
public record PackSource(double fullVoltageV, double resistanceOhm) {
    /**
     * Currents over the capacity, 1/h, between which the fall of the voltage is that of the resistance alone: the loss at
     * the electrodes' faces grows with the logarithm of the current, and adds least where that is great.
     */
    private static final double LOW_PER_H = 20;

    private static final double HIGH_PER_H = 40;

    /** Checks the physics. */
    public PackSource {
        Guard.positive("fullVoltageV", fullVoltageV);
        Guard.positive("resistanceOhm", resistanceOhm);
    }

    /**
     * The source that a pack is.
     *
     * @param pack the pack, with what leads lie before the plug
     * @param surroundings temperature of the cells
     * @return the source
     */
    public static PackSource of(Pack pack, Surroundings surroundings) {
        PackState state = PackState.of(pack, surroundings);
        double capacityAh = Charge.ahFromC(pack.capacityC());
        double lowA = LOW_PER_H * capacityAh;
        double highA = HIGH_PER_H * capacityAh;
        return new PackSource(
                pack.fullVoltageV(), (state.terminalVoltageV(lowA) - state.terminalVoltageV(highA)) / (highA - lowA));
    }
}
