package trestle.massbalance;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * How far an item can be moved.
 *
 * @param fromM foremost arm, m
 * @param toM aftmost arm, m, not ahead of {@code fromM}
 */
public record Travel(double fromM, double toM) {
    /** Checks the order. */
    public Travel {
        Guard.finite("fromM", fromM);
        Guard.finite("toM", toM);
        if (fromM > toM) {
            throw new ImpossibleValue("toM", "a travel's aft end lies ahead of its fore end");
        }
    }

    /**
     * Whether an arm lies within the travel.
     *
     * @param armM arm, m
     * @return true within the ends, to a rounding of doubles
     */
    public boolean reaches(double armM) {
        return armM >= fromM - MassBalance.ROUNDING_M && armM <= toM + MassBalance.ROUNDING_M;
    }
}
