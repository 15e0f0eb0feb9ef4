package trestle.massbalance;

/**
 * A line of the table of moments.
 *
 * @param name the item
 * @param massKg mass of all its pieces, kg
 * @param armM arm, m
 * @param momentKgM moment about the datum, kg m
 * @param massFraction its share of the whole mass
 */
public record Moment(String name, double massKg, double armM, double momentKgM, double massFraction) {}
