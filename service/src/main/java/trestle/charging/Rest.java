package trestle.charging;

/**
 * How a pack rests well.
 *
 * @param fraction state of charge, of the capacity as it is now
 * @param cellV voltage of a cell then at rest, V; of the first segment
 * @param chargeC charge to put in until there, C; below 0 to take out; of the first segment
 */
public record Rest(double fraction, double cellV, double chargeC) {}
