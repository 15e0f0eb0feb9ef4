package trestle.units;

/** Angle: degree at the edge, radian inside. */
public final class Angle {
    private Angle() {}

    /**
     * Angle, rad.
     *
     * @param angleDeg angle, °
     * @return angle, rad
     */
    public static double radFromDeg(double angleDeg) {
        return Math.toRadians(angleDeg);
    }

    /**
     * Angle, °.
     *
     * @param angleRad angle, rad
     * @return angle, °
     */
    public static double degFromRad(double angleRad) {
        return Math.toDegrees(angleRad);
    }
}
