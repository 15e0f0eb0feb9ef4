package trestle.flight;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/**
 * Whether an airspeed can be flown: stall, end of the power data, thrust.
 *
 * @param flight the aircraft in its air
 * @param judge hears of it
 */
record AirspeedChecks(SteadyFlight flight, Judge judge) {

    /**
     * Judges an airspeed.
     *
     * @param airspeed airspeed, m/s
     * @param subject what flies at it
     * @param what its name in a sentence, for example "the airspeed asked for"
     */
    void judge(double airspeed, Subject subject, String what) {
        judge.essential("stall-margin", what + " over the stall", subject, trial -> stall(trial, airspeed, what));
        judge.check("power-data", what + " within the power data", subject, trial -> data(trial, airspeed, what));
        judge.essential("thrust", "thrust at " + what, subject, trial -> thrust(trial, airspeed, what));
    }

    /** Says that none of it can be judged, since nothing flies. */
    void notJudged(Subject subject, String what) {
        judge.essential("stall-margin", what + " over the stall", subject, Trial::notJudged);
        judge.check("power-data", what + " within the power data", subject, Trial::notJudged);
        judge.essential("thrust", "thrust at " + what, subject, Trial::notJudged);
    }

    private void stall(Trial trial, double airspeed, String what) {
        double stall = flight.stallSpeedMPerS();
        double floor = flight.floorMPerS();
        trial.of(airspeed, "m/s")
                .atLeast(stall, Basis.COMPUTED)
                .stop(
                        "stall-above-airspeed",
                        "%.1f m/s, %s, is below the stall speed of %.1f m/s.",
                        airspeed,
                        what,
                        stall)
                .atLeast(floor, Basis.COMMON_PRACTICE)
                .attention(
                        "stall-margin-thin",
                        "%.1f m/s, %s, is close to the stall: fly %.1f m/s or more, 1.2 times the stall speed.",
                        airspeed,
                        what,
                        floor);
    }

    private void data(Trial trial, double airspeed, String what) {
        AirspeedRange valid = flight.validAirspeeds();
        if (valid.equals(AirspeedRange.ALL)) {
            return;
        }
        String sentence = "%.1f m/s, %s, is beyond the %.1f m/s where the power data end: the power"
                + " is extrapolated and may be too low.";
        trial.of(airspeed, "m/s")
                .atLeast(valid.leastMPerS(), Basis.REQUEST)
                .attention("power-curve-extrapolated", sentence, airspeed, what, valid.leastMPerS())
                .atMost(valid.greatestMPerS(), Basis.REQUEST)
                .attention("power-curve-extrapolated", sentence, airspeed, what, valid.greatestMPerS());
    }

    private void thrust(Trial trial, double airspeed, String what) {
        trial.stopIf(
                Double.isInfinite(flight.powerW(airspeed)),
                "thrust-not-available",
                "The propulsion does not hold level flight at %.1f m/s, %s.",
                airspeed,
                what);
    }
}
