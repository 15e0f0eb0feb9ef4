package trestle.wiring;

/**
 * A wire at the end of a peak.
 *
 * @param surfaceK its surface, K
 * @param conductorK its copper, K
 */
record PeakEnd(double surfaceK, double conductorK) {}
