package trestle.flight;

import java.util.List;
import java.util.OptionalDouble;

/** What feeds the aircraft, full at the start: a pack model or a plain amount of energy. */
public interface EnergyStore {
    /**
     * Draws a constant power from full to the end.
     *
     * @param powerW power, W, above 0
     * @return how long it lasts and what it gives
     */
    Draw constantPower(double powerW);

    /**
     * Draws one power after another, from full, until the last step or the end of the store.
     *
     * @param steps the steps in order, at least one
     * @return what each step that was begun took
     */
    Plan fly(List<Step> steps);

    /**
     * The voltage at which it counts as empty.
     *
     * @return voltage, V; empty where the store has none
     */
    OptionalDouble cutoffVoltageV();
}
