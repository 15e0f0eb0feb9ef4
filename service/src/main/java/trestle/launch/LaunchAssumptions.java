package trestle.launch;

import trestle.finding.Judge;
import trestle.finding.Subject;

/** The model choices behind the numbers of {@link LaunchStall}. */
final class LaunchAssumptions {
    private LaunchAssumptions() {}

    static void assume(LaunchStallTask task, Judge judge) {
        judge.assume(
                Subject.of(LaunchPart.MAX_LIFT_COEFFICIENT),
                Judge.text(
                        "lift coefficient at most %.2f after release, 0.9 of the greatest",
                        FlightPath.USED_SHARE_OF_LIFT * task.airframe().maxLiftCoefficient()),
                "a pilot or a controller stays short of the stall");
        judge.assume(
                Subject.of(LaunchPart.LAUNCH),
                "the path is brought level within about half a second; thrust along the path; no" + " ground effect",
                "pitch dynamics are not modelled; ground effect would help");
        judge.assume(
                Subject.of(LaunchPart.THRUST), thrust(task.thrust()), "full power from the moment the motor pulls");
        if (task.launch() instanceof Launch.Bungee) {
            judge.assume(
                    Subject.of(LaunchPart.LAUNCH),
                    "linear cord, no lift on the ramp, motor off until the cord is slack",
                    "the propeller must not turn into the line");
        }
        if (task.launch() instanceof Launch.Catapult) {
            judge.assume(
                    Subject.of(LaunchPart.LAUNCH),
                    "constant acceleration along the rail",
                    "only the speed at its end is given");
        }
        if (task.turnAirspeedMPerS().isEmpty()) {
            judge.assume(
                    Subject.of(LaunchPart.TURN),
                    "turned at 1.3 of the stall speed in the turn",
                    "no airspeed is given");
        }
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
