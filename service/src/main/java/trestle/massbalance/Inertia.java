package trestle.massbalance;

/**
 * Moments of inertia about axes through the CG; a lower bound as far as items with a size count as points.
 *
 * @param rollKgM2 about the x axis, kg m²
 * @param pitchKgM2 about the y axis, kg m²
 * @param yawKgM2 about the z axis, kg m²
 */
public record Inertia(double rollKgM2, double pitchKgM2, double yawKgM2) {
    /** That of a point about itself. */
    public static final Inertia NONE = new Inertia(0, 0, 0);
}
