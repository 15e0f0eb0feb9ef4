package trestle.launch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Assumption;
import trestle.finding.Subject;

/** The model choices behind the numbers of {@link LaunchStall}. */
final class LaunchAssumptions {
    private LaunchAssumptions() {}

    static List<Assumption> of(LaunchStallTask task) {
        List<Assumption> all = new ArrayList<>();
        add(
                all,
                LaunchPart.MAX_LIFT_COEFFICIENT,
                text(
                        "lift coefficient at most %.2f after release, 0.9 of the greatest",
                        FlightPath.USED_SHARE_OF_LIFT * task.airframe().maxLiftCoefficient()),
                "a pilot or a controller stays short of the stall");
        add(
                all,
                LaunchPart.LAUNCH,
                "the path is brought level within about half a second; thrust along the path; no" + " ground effect",
                "pitch dynamics are not modelled; ground effect would help");
        add(all, LaunchPart.THRUST, thrust(task.thrust()), "full power from the moment the motor pulls");
        if (task.launch() instanceof Launch.Bungee) {
            add(
                    all,
                    LaunchPart.LAUNCH,
                    "linear cord, no lift on the ramp, motor off until the cord is slack",
                    "the propeller must not turn into the line");
        }
        if (task.launch() instanceof Launch.Catapult) {
            add(all, LaunchPart.LAUNCH, "constant acceleration along the rail", "only the speed at its end is given");
        }
        if (task.turnAirspeedMPerS().isEmpty()) {
            add(all, LaunchPart.TURN, "turned at 1.3 of the stall speed in the turn", "no airspeed is given");
        }
        return all;
    }

    private static String thrust(Thrust thrust) {
        if (thrust instanceof LinearThrust linear) {
            return text(
                    "thrust falls in a straight line from %.1f N to nothing at %.1f m/s",
                    linear.staticThrustN(), linear.pitchSpeedMPerS());
        }
        return "thrust as given, for this air";
    }

    private static void add(List<Assumption> all, LaunchPart part, String assumed, String because) {
        all.add(new Assumption(Subject.of(part), assumed, because));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
