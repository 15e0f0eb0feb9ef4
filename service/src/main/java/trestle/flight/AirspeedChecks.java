package trestle.flight;

import static trestle.finding.Severity.ATTENTION;
import static trestle.finding.Severity.STOP;

import java.util.HashSet;
import java.util.Set;
import trestle.finding.Basis;
import trestle.finding.Digits;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Whether an airspeed can be flown: stall, end of the power data, thrust. What holds for several legs is said once. */
final class AirspeedChecks {
    private final SteadyFlight flight;
    private final Judge judge;
    private final Set<Double> said = new HashSet<>();

    /**
     * Checks of the airspeeds of one flight.
     *
     * @param flight the aircraft in its air
     * @param judge hears of it
     */
    AirspeedChecks(SteadyFlight flight, Judge judge) {
        this.flight = flight;
        this.judge = judge;
    }

    /**
     * Judges an airspeed.
     *
     * @param airspeed airspeed, m/s
     * @param subject what flies at it
     * @param what its name in a sentence, for example "the airspeed asked for"
     */
    void judge(double airspeed, Subject subject, String what) {
        boolean again = !said.add(airspeed);
        judge.essential(
                "stall-margin", "margin over the stall of " + what, subject, t -> stall(t, airspeed, what, again));
        judge.check("power-data", "whether the power data reach " + what, subject, t -> data(t, airspeed, what, again));
        judge.essential("thrust", "thrust at " + what, subject, t -> thrust(t, airspeed, what, again));
    }

    /** Says that none of it can be judged, since nothing flies. */
    void notJudged(Subject subject, String what) {
        judge.essential("stall-margin", "margin over the stall of " + what, subject, Trial::notJudged);
        judge.check("power-data", "whether the power data reach " + what, subject, Trial::notJudged);
        judge.essential("thrust", "thrust at " + what, subject, Trial::notJudged);
    }

    private void stall(Trial trial, double airspeed, String what, boolean again) {
        double stall = flight.stallSpeedMPerS();
        double floor = flight.floorMPerS();
        Digits below = Digits.apart(airspeed, stall, 1);
        Digits thin = Digits.apart(airspeed, floor, 1);
        trial.of(airspeed, "m/s")
                .atLeast(stall, Basis.COMPUTED)
                .asSaid(again && airspeed < stall, STOP)
                .stop(
                        "stall-above-airspeed",
                        "%s m/s, %s, is below the stall speed of %s m/s: fly %.1f m/s or more, 1.2 times the stall speed"
                                + " (common practice).",
                        below.first(),
                        what,
                        below.second(),
                        floor)
                .atLeast(floor, Basis.COMMON_PRACTICE)
                .asSaid(again && airspeed < floor, ATTENTION)
                .attention(
                        "stall-margin-thin",
                        "%s m/s, %s, is close to the stall: fly %s m/s or more, 1.2 times the stall speed (common"
                                + " practice).",
                        thin.first(),
                        what,
                        thin.second());
    }

    private void data(Trial trial, double airspeed, String what, boolean again) {
        AirspeedRange valid = flight.validAirspeeds();
        if (valid.equals(AirspeedRange.ALL)) {
            return;
        }
        String sentence = "%.1f m/s, %s, is beyond the %.1f m/s where the power data end: the power is extrapolated and"
                + " may be too low; measure there.";
        trial.of(airspeed, "m/s")
                .atLeast(valid.leastMPerS(), Basis.REQUEST)
                .asSaid(again && !valid.contains(airspeed), ATTENTION)
                .attention("power-curve-extrapolated", sentence, airspeed, what, valid.leastMPerS())
                .atMost(valid.greatestMPerS(), Basis.REQUEST)
                .attention("power-curve-extrapolated", sentence, airspeed, what, valid.greatestMPerS());
    }

    private void thrust(Trial trial, double airspeed, String what, boolean again) {
        boolean lacking = Double.isInfinite(flight.powerW(airspeed));
        trial.asSaid(again && lacking, STOP)
                .stopIf(
                        lacking,
                        "thrust-not-available",
                        "The propulsion does not hold level flight at %.1f m/s, %s: fly slower, or take a larger motor or"
                                + " propeller.",
                        airspeed,
                        what);
    }
}
