package trestle.massbalance;

/**
 * A mass that brings the CG to the target without moving anything.
 *
 * @param place what is there: the name of an item, or the tail
 * @param armM where, m aft of the datum
 * @param massKg how much, kg, above 0
 * @param totalMassKg mass of the aircraft with it, kg
 */
public record Ballast(String place, double armM, double massKg, double totalMassKg) {}
