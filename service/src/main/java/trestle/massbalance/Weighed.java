package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the scales say, beside the list.
 *
 * @param massKg mass, kg
 * @param armM CG aft of the datum, m; empty where all supports stand at one arm
 * @param lateralM CG right of the plane of symmetry, m; empty without three supports of known place
 *     that do not stand in one line
 * @param massToleranceKg tolerance of the mass, kg
 * @param armToleranceM tolerance of the arm, m
 * @param lateralToleranceM tolerance of the lateral place, m
 * @param differenceFromItemsKg scales less list, kg
 * @param differenceFromItemsM CG of the scales less that of the list, m; empty without an arm
 * @param missing the item that would explain the difference; empty where the masses agree within
 *     their tolerances or there is no arm
 */
public record Weighed(
        double massKg,
        OptionalDouble armM,
        OptionalDouble lateralM,
        double massToleranceKg,
        double armToleranceM,
        double lateralToleranceM,
        double differenceFromItemsKg,
        OptionalDouble differenceFromItemsM,
        Optional<MissingItem> missing) {}
