package trestle.flight;

import trestle.finding.Judge;
import trestle.units.Time;

/** A time of a flight as its sentences print it. */
final class FlightTime {
    private static final int MINUTES_PER_HOUR = 60;

    private FlightTime() {}

    /** Minutes below an hour, hours and minutes from there; seconds where a minute says too little. */
    static String text(double timeS) {
        if (timeS < Time.sFromMin(2)) {
            return Judge.text("%.0f s", timeS);
        }
        long minutes = Math.round(Time.minFromS(timeS));
        return minutes < MINUTES_PER_HOUR
                ? minutes + " min"
                : Judge.text("%d h %02d min", minutes / MINUTES_PER_HOUR, minutes % MINUTES_PER_HOUR);
    }
}
