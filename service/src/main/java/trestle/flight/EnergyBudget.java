package trestle.flight;

import java.util.List;
import java.util.Optional;

/**
 * Where the energy goes.
 *
 * @param availableJ usable energy, J: at best-endurance power, or, where legs are flown, what the
 *     legs take and what is then left at best-endurance power
 * @param reserveJ the share of it that is kept, J
 * @param plannedJ what the legs ask for, J
 * @param leftJ what is left after the legs, reserve included, J
 * @param legs the legs in order
 * @param shortfall where the plan meets the reserve; empty where it does not
 */
public record EnergyBudget(
        double availableJ,
        double reserveJ,
        double plannedJ,
        double leftJ,
        List<LegResult> legs,
        Optional<Shortfall> shortfall) {
    /** Copies the list. */
    public EnergyBudget {
        legs = List.copyOf(legs);
    }
}
