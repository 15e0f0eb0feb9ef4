package trestle.flight;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a plan asks for more than there is above the reserve.
 *
 * @param legIndex the leg in which the reserve is reached, or in which the store ended; from 0
 * @param atS when, s from the start of the flight
 * @param missingJ energy missing for the whole plan and the reserve, J
 * @param end why the store ended within the plan; empty where the plan can be flown to its end on
 *     the reserve
 * @param voltageV lowest voltage in that leg, V; empty where the store has none
 * @param leftAtBestEnduranceJ what the store would still give at best-endurance power from there, J: much where sag
 *     ended it, none where the energy did
 */
public record Shortfall(
        int legIndex,
        double atS,
        double missingJ,
        Optional<StoreEnd> end,
        OptionalDouble voltageV,
        double leftAtBestEnduranceJ) {
    /**
     * Whether the plan can be flown to its end on the reserve.
     *
     * @return true if it can
     */
    public boolean intoReserveOnly() {
        return end.isEmpty();
    }
}
