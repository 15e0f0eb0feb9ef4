package trestle.structure;

/**
 * A mass in one half wing, its mirror image in the other.
 *
 * @param name what it is called
 * @param massKg one half's, kg
 * @param lateralM from the plane of symmetry, m
 */
public record WingItem(String name, double massKg, double lateralM) {}
