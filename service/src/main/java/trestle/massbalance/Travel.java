package trestle.massbalance;

import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * How far an item can be moved.
 *
 * @param fromM most forward arm, m
 * @param toM most aft arm, m, not forward of {@code fromM}
 */
public record Travel(double fromM, double toM) {
    /** Checks the order. */
    public Travel {
        Guard.finite("fromM", fromM);
        Guard.finite("toM", toM);
        if (fromM > toM) {
            throw new ImpossibleValue("toM", "a travel's aft end lies forward of its forward end");
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
