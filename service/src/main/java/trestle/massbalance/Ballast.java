package trestle.massbalance;

/**
 * A mass that brings the CG to the target without moving anything.
 *
 * @param armM where, m aft of the datum
 * @param massKg how much, kg, above 0
 * @param totalMassKg mass of the aircraft with it, kg
 */
public record Ballast(double armM, double massKg, double totalMassKg) {}
