package trestle.battery;

/**
 * The greatest power for a moment, above the cutoff and within the cells' rating.
 *
 * @param startW rested, at the start, W
 * @param midW half-way through the discharge, W
 * @param endW at its end, W
 */
public record PowerAllowed(double startW, double midW, double endW) {}
