package trestle.launch;

import trestle.finding.Judge;
import trestle.finding.Subject;

/** The model choices behind the numbers of {@link LaunchAndClimb}. */
final class LaunchAssumptions {
    private LaunchAssumptions() {}

    static void assume(LaunchAndClimbTask task, Judge judge) {
        judge.assume(
                Subject.of(LaunchPart.MAX_LIFT_COEFFICIENT),
                Judge.text(
                        "lift coefficient at most %.2f after release, 0.9 of the maximum",
                        FlightPath.USED_SHARE_OF_LIFT * task.airframe().maxLiftCoefficient()),
                "a pilot or a controller stays short of the stall");
        judge.assume(
                Subject.of(LaunchPart.LAUNCH),
                "the path is brought level within about half a second; thrust along the path; no ground effect",
                "pitch dynamics are not modelled; ground effect would help");
        judge.assume(
                Subject.of(LaunchPart.THRUST), thrust(task.thrust()), "full power from the moment the motor pulls");
        wind(task, judge);
        if (task.launch() instanceof Launch.Hand) {
            judge.assume(
                    Subject.of(LaunchPart.LAUNCH),
                    Judge.text("thrown evenly over %.1f m of arm and step", LaunchLoads.STROKE_M),
                    "for its acceleration; common practice, no source");
        }
        if (task.launch() instanceof Launch.Bungee) {
            judge.assume(
                    Subject.of(LaunchPart.LAUNCH),
                    "linear cord, no lift on the ramp, motor off until the cord is slack",
                    "the propeller must not turn into the line");
        }
        if (task.launch() instanceof Launch.Catapult) {
            judge.assume(
                    Subject.of(LaunchPart.LAUNCH),
                    Judge.text(
                            "constant acceleration along the rail; its peak %.1f times that",
                            LaunchLoads.CATAPULT_PEAK_RATIO),
                    "only the speed at its end is given; the peak is common practice, no source");
        }
        if (task.turnAirspeedMPerS().isEmpty()) {
            judge.assume(
                    Subject.of(LaunchPart.TURN),
                    "turned at 1.3 of the stall speed in the turn",
                    "no airspeed is given");
        }
    }

    private static void wind(LaunchAndClimbTask task, Judge judge) {
        LaunchWind wind = task.wind();
        double heightM = task.launch().releaseHeightM();
        if (wind.speedMPerS() == 0) {
            return;
        }
        String law = wind.holds(heightM) && wind.holds(wind.heightM())
                ? "logarithmic law over the terrain (Davenport and Wieringa), turbulence as 1/ln(h/z0) unless gusts are"
                        + " given"
                : "the logarithmic law does not hold at these heights over this terrain, so that a headwind counts only"
                        + " where it was measured";
        judge.assume(
                Subject.of(LaunchPart.WIND),
                Judge.text(
                        "%.1f m/s at the release height of %.1f m, %.1f m/s in a lull; the launch is judged in the lull",
                        wind.meanMPerS(heightM), heightM, wind.lullMPerS(heightM)),
                law);
    }

    private static String thrust(Thrust thrust) {
        if (thrust instanceof LinearThrust linear) {
            return Judge.text(
                    "thrust falls in a straight line from %.1f N to nothing at %.1f m/s",
                    linear.staticThrustN(), linear.pitchSpeedMPerS());
        }
        return "thrust as given, for this air";
    }
}
