package trestle.units;

/** Length: millimetre, inch, kilometre at the edge, metre inside. */
public final class Length {
    /** International inch, exact. */
    private static final double METRES_PER_INCH = 0.0254;

    private Length() {}

    /**
     * Length, m.
     *
     * @param lengthMm length, mm
     * @return length, m
     */
    public static double mFromMm(double lengthMm) {
        return lengthMm / 1000;
    }

    /**
     * Length, mm.
     *
     * @param lengthM length, m
     * @return length, mm
     */
    public static double mmFromM(double lengthM) {
        return lengthM * 1000;
    }

    /**
     * Length, m.
     *
     * @param lengthIn length, in
     * @return length, m
     */
    public static double mFromIn(double lengthIn) {
        return lengthIn * METRES_PER_INCH;
    }

    /**
     * Length, in.
     *
     * @param lengthM length, m
     * @return length, in
     */
    public static double inFromM(double lengthM) {
        return lengthM / METRES_PER_INCH;
    }

    /**
     * Length, m.
     *
     * @param lengthKm length, km
     * @return length, m
     */
    public static double mFromKm(double lengthKm) {
        return lengthKm * 1000;
    }

    /**
     * Length, km.
     *
     * @param lengthM length, m
     * @return length, km
     */
    public static double kmFromM(double lengthM) {
        return lengthM / 1000;
    }

    /**
     * Length, m.
     *
     * @param lengthCm length, cm
     * @return length, m
     */
    public static double mFromCm(double lengthCm) {
        return lengthCm / 100;
    }

    /**
     * Length, cm.
     *
     * @param lengthM length, m
     * @return length, cm
     */
    public static double cmFromM(double lengthM) {
        return lengthM * 100;
    }
}
