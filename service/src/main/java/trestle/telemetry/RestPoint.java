package trestle.telemetry;

/**
 * A point of a pack's rest voltage.
 *
 * @param usedC charge out of it since full, C
 * @param voltageV voltage at rest, V
 */
public record RestPoint(double usedC, double voltageV) {}
