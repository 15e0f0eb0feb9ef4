package trestle.massbalance;

/**
 * Moments of inertia of point items about axes through the CG: a lower bound, as items have size.
 *
 * @param rollKgM2 about the x axis, kg m²
 * @param pitchKgM2 about the y axis, kg m²
 * @param yawKgM2 about the z axis, kg m²
 */
public record Inertia(double rollKgM2, double pitchKgM2, double yawKgM2) {}
