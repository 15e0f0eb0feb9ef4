package trestle.review;

import java.util.Optional;
import trestle.battery.PackTask;
import trestle.flight.EnduranceTask;
import trestle.launch.LaunchAndClimbTask;
import trestle.massbalance.BalanceTask;
import trestle.rails.RailTask;

/**
 * What the parts of a review were asked, where the results do not carry it themselves.
 *
 * @param balance mass and balance; empty where only the mass of the whole is known
 * @param endurance the flight
 * @param pack the pack in cruise
 * @param rails the rails; empty without one
 * @param launch the launch; empty where none was asked for
 */
public record ReviewTasks(
        Optional<BalanceTask> balance,
        EnduranceTask endurance,
        PackTask pack,
        Optional<RailTask> rails,
        Optional<LaunchAndClimbTask> launch) {}
