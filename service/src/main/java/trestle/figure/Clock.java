package trestle.figure;

import trestle.units.Time;

/** The unit of a time axis: the largest that still has a few of it. */
enum Clock {
    HOURS("h", Time.sFromH(1)),
    MINUTES("min", Time.sFromMin(1)),
    SECONDS("s", 1);

    private static final double A_FEW = 2.5;

    private final String unit;
    private final double lengthS;

    Clock(String unit, double lengthS) {
        this.unit = unit;
        this.lengthS = lengthS;
    }

    static Clock forTimesUpTo(double longestS) {
        if (longestS >= A_FEW * HOURS.lengthS) {
            return HOURS;
        }
        return longestS >= A_FEW * MINUTES.lengthS ? MINUTES : SECONDS;
    }

    String unit() {
        return unit;
    }

    double count(double timeS) {
        return timeS / lengthS;
    }
}
