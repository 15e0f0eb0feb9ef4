package trestle.structure;

/**
 * Hinge moment of a plain flap on a thin section (Glauert, ARC R&amp;M 1095, 1927), theory: real plain surfaces show 0.6 to 0.9
 * of it.
 */
public final class Hinge {
    private Hinge() {}

    private static double angle(double chordRatio) {
        return Math.acos(2 * chordRatio - 1);
    }

    /**
     * Change of hinge moment coefficient with angle of attack.
     *
     * @param chordRatio chord of the surface over that of the section, above 0 to 1
     * @return per rad, negative
     */
    public static double b1(double chordRatio) {
        double p = angle(chordRatio);
        return -(2 * (Math.PI - p) * (2 * Math.cos(p) - 1) + 4 * Math.sin(p) - Math.sin(2 * p))
                / (4 * chordRatio * chordRatio);
    }

    /**
     * Change of hinge moment coefficient with deflection.
     *
     * @param chordRatio chord of the surface over that of the section, above 0 to 1
     * @return per rad, negative
     */
    public static double b2(double chordRatio) {
        double p = angle(chordRatio);
        double rest = Math.PI - p;
        return -((1 - Math.cos(2 * p)) - 2 * rest * rest * (1 - 2 * Math.cos(p)) + 4 * rest * Math.sin(p))
                / (4 * Math.PI * chordRatio * chordRatio);
    }

    /**
     * Lift of the surface's deflection over that of the whole section's: {@code (π − φ + sin φ)/π}.
     *
     * @param chordRatio chord of the surface over that of the section, above 0 to 1
     * @return 0 to 1
     */
    public static double effectiveness(double chordRatio) {
        double p = angle(chordRatio);
        return (Math.PI - p + Math.sin(p)) / Math.PI;
    }
}
