package trestle.figure;

import trestle.units.Time;

/** Values as a builder says them. */
final class Words {
    private static final double SHORT_S = 100;

    private Words() {}

    /** A time, such as 2 h 05 min, 7 min 30 s or 4.2 s. */
    static String time(double timeS) {
        if (timeS < SHORT_S) {
            return Numbers.significant(timeS, 2) + " s";
        }
        long minutes = Math.round(Time.minFromS(timeS));
        return minutes < 60
                ? minutes + " min"
                : minutes / 60 + " h " + (minutes % 60 < 10 ? "0" : "") + minutes % 60 + " min";
    }

    /** A name that a user gave, made safe and no wider than so much. */
    static String name(String given, double width) {
        return PlainText.isolated(TextFit.shortened(PlainText.clean(given), Font.TEXT, width));
    }
}
