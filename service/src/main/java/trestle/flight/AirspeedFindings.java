package trestle.flight;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/**
 * Whether an airspeed can be flown: stall, end of the power data, thrust.
 *
 * @param flight the aircraft in its air
 */
record AirspeedFindings(SteadyFlight flight) {

    /**
     * What there is to say about an airspeed.
     *
     * @param airspeed airspeed, m/s
     * @param subject what flies at it
     * @param what its name in a sentence, for example "the airspeed asked for"
     * @return the findings
     */
    List<Finding> about(double airspeed, Subject subject, String what) {
        List<Finding> findings = new ArrayList<>();
        double stall = flight.stallSpeedMPerS();
        double floor = flight.floorMPerS();
        if (airspeed < stall) {
            findings.add(of(
                    STOP,
                    "stall-above-airspeed",
                    subject,
                    airspeed,
                    stall,
                    "%.1f m/s, " + what + ", is below the stall speed of %.1f m/s."));
        } else if (airspeed < floor) {
            findings.add(of(
                    ATTENTION,
                    "stall-margin-thin",
                    subject,
                    airspeed,
                    floor,
                    "%.1f m/s, " + what + ", is close to the stall: fly %.1f m/s or more, 1.2 times the stall speed."));
        }
        AirspeedRange valid = flight.validAirspeeds();
        if (!valid.contains(airspeed)) {
            findings.add(of(
                    ATTENTION,
                    "power-curve-extrapolated",
                    subject,
                    airspeed,
                    airspeed < valid.leastMPerS() ? valid.leastMPerS() : valid.greatestMPerS(),
                    "%.1f m/s, "
                            + what
                            + ", is beyond the %.1f m/s where the power data end: the power"
                            + " is extrapolated and may be too low."));
        }
        if (Double.isInfinite(flight.powerW(airspeed))) {
            findings.add(Finding.of(
                    STOP,
                    "thrust-not-available",
                    subject,
                    String.format(
                            Locale.ROOT,
                            "The propulsion does not hold level flight at %.1f m/s, %s.",
                            airspeed,
                            what)));
        }
        return findings;
    }

    /** The message has two places: for the value and for the limit. */
    private static Finding of(
            Severity severity, String code, Subject subject, double value, double limit, String message) {
        return Finding.of(severity, code, subject, value, limit, String.format(Locale.ROOT, message, value, limit));
    }
}
