package trestle.flight;

import java.util.OptionalDouble;
import trestle.numeric.Guard;

/**
 * A store drawn at constant power from full to its end.
 *
 * @param durationS how long it lasts, s; 0 where it cannot give that power at all
 * @param energyJ energy given, J
 * @param startCurrentA current at the start, A; empty where the store has no voltage
 * @param meanCurrentA mean current, A; empty where the store has no voltage
 * @param end why it ended
 */
public record Draw(
        double durationS, double energyJ, OptionalDouble startCurrentA, OptionalDouble meanCurrentA, StoreEnd end) {
    /** Checks the physics. */
    public Draw {
        Guard.notNegative("durationS", durationS);
        Guard.notNegative("energyJ", energyJ);
        Guard.present("end", end);
    }
}
