package trestle.flight;

import java.util.Optional;

/**
 * Where a plan asks for more than there is above the reserve.
 *
 * @param legIndex the leg, from 0
 * @param atS when, s from the start of the flight
 * @param missingJ energy missing for the whole plan and the reserve, J
 * @param end why the store ended within the plan; empty where the plan can be flown to its end on
 *     the reserve
 */
public record Shortfall(int legIndex, double atS, double missingJ, Optional<StoreEnd> end) {
    /**
     * Whether the plan can be flown to its end on the reserve.
     *
     * @return true if it can
     */
    public boolean intoReserveOnly() {
        return end.isEmpty();
    }
}
