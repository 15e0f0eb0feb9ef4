package trestle.massbalance;

import java.util.Optional;
import java.util.OptionalDouble;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * One line of the list of what the aircraft is made of: a part, or several alike at one place.
 *
 * @param name what it is called
 * @param quantityCount pieces, 1 or more; they come from one batch and share its error of mass
 * @param massKg mass of one piece, kg, above 0
 * @param armM its own CG aft of the datum, m
 * @param lateralM its own CG right of the plane of symmetry, m; empty where nobody measured it
 * @param verticalM its own CG above the reference line, m; empty where nobody measured it
 * @param massToleranceKg bound on the error of one piece's mass, kg; 0 for exact
 * @param armToleranceM bound on the error of the arm, m; 0 for exact
 * @param travel where it can be moved to; empty for an item that stays
 * @param spread how its mass is spread; empty for a point
 */
public record Item(
        String name,
        int quantityCount,
        double massKg,
        double armM,
        OptionalDouble lateralM,
        OptionalDouble verticalM,
        double massToleranceKg,
        double armToleranceM,
        Optional<Travel> travel,
        Optional<Spread> spread) {
    /** Checks the physics. */
    public Item {
        Guard.present("name", name);
        if (quantityCount < 1) {
            throw new ImpossibleValue("quantityCount", "an item counts at least 1 piece");
        }
        Guard.positive("massKg", massKg);
        Guard.finite("armM", armM);
        lateralM.ifPresent(value -> Guard.finite("lateralM", value));
        verticalM.ifPresent(value -> Guard.finite("verticalM", value));
        Guard.notNegative("massToleranceKg", massToleranceKg);
        Guard.notNegative("armToleranceM", armToleranceM);
        Guard.present("travel", travel);
        Guard.present("spread", spread);
    }

    /**
     * An item that is a point.
     *
     * @param name what it is called
     * @param quantityCount pieces, 1 or more
     * @param massKg mass of one piece, kg, above 0
     * @param armM its own CG aft of the datum, m
     * @param lateralM its own CG right of the plane of symmetry, m; empty where nobody measured it
     * @param verticalM its own CG above the reference line, m; empty where nobody measured it
     * @param massToleranceKg bound on the error of one piece's mass, kg; 0 for exact
     * @param armToleranceM bound on the error of the arm, m; 0 for exact
     * @param travel where it can be moved to; empty for an item that stays
     */
    public Item(
            String name,
            int quantityCount,
            double massKg,
            double armM,
            OptionalDouble lateralM,
            OptionalDouble verticalM,
            double massToleranceKg,
            double armToleranceM,
            Optional<Travel> travel) {
        this(
                name,
                quantityCount,
                massKg,
                armM,
                lateralM,
                verticalM,
                massToleranceKg,
                armToleranceM,
                travel,
                Optional.empty());
    }

    /**
     * One exact piece that stays where it is.
     *
     * @param name what it is called
     * @param mass its mass and place
     * @return the item
     */
    public static Item of(String name, PointMass mass) {
        return new Item(
                name,
                1,
                mass.massKg(),
                mass.armM(),
                OptionalDouble.of(mass.lateralM()),
                OptionalDouble.of(mass.verticalM()),
                0,
                0,
                Optional.empty());
    }

    /**
     * The same item at another arm.
     *
     * @param newArmM arm, m
     * @return the moved item
     */
    public Item movedTo(double newArmM) {
        return new Item(
                name,
                quantityCount,
                massKg,
                newArmM,
                lateralM,
                verticalM,
                massToleranceKg,
                armToleranceM,
                travel,
                spread);
    }

    /**
     * Mass of all its pieces.
     *
     * @return mass, kg
     */
    public double totalMassKg() {
        return quantityCount * massKg;
    }

    /**
     * All its pieces as one mass; a lateral or vertical place that is not known stands at 0.
     *
     * @return mass and place
     */
    public PointMass pointMass() {
        return new PointMass(totalMassKg(), armM, lateralM.orElse(0), verticalM.orElse(0));
    }
}
