package trestle.figure;

import trestle.units.Time;

/** Values as a builder says them. */
final class Words {
    private static final double SHORT_S = 100;

    private Words() {}

    /** A time, such as 2 h 05 min, 7 min or 4.2 s. */
    static String time(double timeS) {
        return timeS < SHORT_S ? Numbers.significant(timeS, 2) + " s" : Time.saidInMinutes(timeS);
    }

    /** A name that a user gave, made safe and no wider than so much. */
    static String name(String given, double width) {
        return PlainText.isolated(TextFit.shortened(PlainText.clean(given), Font.TEXT, width));
    }
}
