package trestle.units;

/** Rotation: revolutions a minute at the edge, radian a second inside. */
public final class Rotation {
    private Rotation() {}

    /**
     * Rotation, rad/s.
     *
     * @param rotationRpm rotation, rpm
     * @return rotation, rad/s
     */
    public static double radPerSFromRpm(double rotationRpm) {
        return rotationRpm * 2 * Math.PI / 60;
    }

    /**
     * Rotation, rpm.
     *
     * @param rotationRadPerS rotation, rad/s
     * @return rotation, rpm
     */
    public static double rpmFromRadPerS(double rotationRadPerS) {
        return rotationRadPerS * 60 / (2 * Math.PI);
    }
}
