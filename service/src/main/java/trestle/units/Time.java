package trestle.units;

import java.util.Locale;

/** Time: minute and hour at the edge, second inside. */
public final class Time {
    /** Exact. */
    private static final double SECONDS_PER_HOUR = 3600;

    /** Exact. */
    private static final double SECONDS_PER_MINUTE = 60;

    private static final double MOST_SAID_IN_SECONDS = 100;

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

    /**
     * A time as a builder says it.
     *
     * @param timeS time, s, not negative
     * @return such as {@code 4.2 s}, {@code 45 s}, {@code 12 min}, {@code 4 h 24 min}
     */
    public static String said(double timeS) {
        if (timeS < MOST_SAID_IN_SECONDS) {
            return String.format(Locale.ROOT, timeS < 10 ? "%.1f s" : "%.0f s", timeS);
        }
        return saidInMinutes(timeS);
    }

    /**
     * A time to the minute as a builder says it.
     *
     * @param timeS time, s, not negative
     * @return such as {@code 12 min}, {@code 4 h 24 min}
     */
    public static String saidInMinutes(double timeS) {
        long minutes = Math.round(minFromS(timeS));
        return minutes < 60
                ? minutes + " min"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }
}
