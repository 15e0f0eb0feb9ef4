package trestle.massbalance;

/**
 * The one item that would make list and scales agree.
 *
 * @param massKg its mass, kg; below 0 where the list holds more than the scales
 * @param armM its arm, m
 */
public record MissingItem(double massKg, double armM) {}
