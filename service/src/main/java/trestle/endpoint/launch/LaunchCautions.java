package trestle.endpoint.launch;

import java.util.ArrayList;
import java.util.List;
import trestle.launch.Launch;
import trestle.launch.LaunchAndClimbTask;

/** What to heed in a launch of the kind that was asked. */
final class LaunchCautions {
    private static final List<String> OF_ALL = List.of(
            "A spinning propeller takes fingers and eyes: wear eye protection, arm the motor last, and keep everyone"
                    + " behind it.",
            "Find the real stall speed at height before relying on a margin near the ground; gusts and a turn in the"
                    + " climb take from it.",
            "Local rules on where and over whom to launch come first.");

    private LaunchCautions() {}

    static List<String> of(LaunchAndClimbTask task) {
        List<String> cautions = new ArrayList<>(own(task.launch()));
        cautions.addAll(OF_ALL);
        return cautions;
    }

    private static List<String> own(Launch launch) {
        if (launch instanceof Launch.Hand) {
            return List.of("Keep the hand clear of the propeller: with a pusher the motor starts only after it has left"
                    + " the hand.");
        }
        if (launch instanceof Launch.Dolly) {
            return List.of(
                    "Keep the run and the climb beyond its end clear of people: a dolly that swerves at full power"
                            + " is not stopped by hand.");
        }
        if (launch instanceof Launch.Bungee) {
            return List.of(
                    "A stretched cord maims when cord, hook or anchor lets go: check them before each launch, prove"
                            + " the anchor above the peak force, tether the hook, and keep everyone out of line.");
        }
        return List.of(
                "A loaded catapult is a weapon: lock it until everyone is clear of rail and line of flight, and check"
                        + " hook, carriage and release before each launch.");
    }
}
