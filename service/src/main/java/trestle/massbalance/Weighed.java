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
        Optional<MissingItem> missing) {

    /**
     * Mass and CG of what flies: what was weighed is what flies, and the list tells what the scales do not.
     *
     * @param list mass and CG of the list
     * @return mass and CG with their tolerances
     */
    Centre over(Centre list) {
        boolean arm = armM.isPresent();
        boolean lateral = lateralM.isPresent();
        return new Centre(
                massKg,
                armM.orElse(list.armM()),
                lateralM.orElse(list.lateralM()),
                list.verticalM(),
                massToleranceKg,
                arm ? armToleranceM : list.armToleranceM(),
                lateral ? lateralToleranceM : list.lateralToleranceM());
    }
}
