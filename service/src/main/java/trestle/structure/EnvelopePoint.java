package trestle.structure;

/**
 * Load factors at a speed.
 *
 * @param airspeedMPerS equivalent, m/s
 * @param positive by a pull
 * @param negative by a push
 * @param gustUp by a gust, stall counted
 * @param gustDown by a gust, stall counted
 */
public record EnvelopePoint(double airspeedMPerS, double positive, double negative, double gustUp, double gustDown) {}
