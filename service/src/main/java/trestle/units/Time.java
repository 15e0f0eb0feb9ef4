package trestle.units;

/** Time: minute and hour at the edge, second inside. */
public final class Time {
    /** Exact. */
    private static final double SECONDS_PER_HOUR = 3600;

    /** Exact. */
    private static final double SECONDS_PER_MINUTE = 60;

    private Time() {}

    /**
     * Time, s.
     *
     * @param timeH time, h
     * @return time, s
     */
    public static double sFromH(double timeH) {
        return timeH * SECONDS_PER_HOUR;
    }

    /**
     * Time, h.
     *
     * @param timeS time, s
     * @return time, h
     */
    public static double hFromS(double timeS) {
        return timeS / SECONDS_PER_HOUR;
    }

    /**
     * Time, s.
     *
     * @param timeMin time, min
     * @return time, s
     */
    public static double sFromMin(double timeMin) {
        return timeMin * SECONDS_PER_MINUTE;
    }

    /**
     * Time, min.
     *
     * @param timeS time, s
     * @return time, min
     */
    public static double minFromS(double timeS) {
        return timeS / SECONDS_PER_MINUTE;
    }
}
