package trestle.flight;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * What a step took from the store.
 *
 * @param startS start, s from the start of the first step
 * @param endS end of the step or of the store, s from the start of the first step
 * @param energyJ energy given, J
 * @param lowestVoltageV lowest voltage in the step, V; empty where the store has none
 * @param meanCurrentA mean current in the step, A; empty where the store has no voltage
 */
public record FlownStep(
        double startS, double endS, double energyJ, OptionalDouble lowestVoltageV, OptionalDouble meanCurrentA) {
    /** Checks the physics. */
    public FlownStep {
        Guard.notNegative("startS", startS);
        Guard.within("endS", endS, startS, Double.MAX_VALUE);
        Guard.notNegative("energyJ", energyJ);
    }
}
