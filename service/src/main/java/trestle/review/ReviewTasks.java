package trestle.review;

import java.util.Optional;
import trestle.battery.PackTask;
import trestle.flight.EnduranceTask;
import trestle.launch.LaunchStallTask;
import trestle.massbalance.BalanceTask;

/**
 * What the review asked the disciplines in its last round: what a figure needs beside the results.
 * Runs, drive and compass carry their own tasks.
 *
 * @param balance mass and balance with packs and wires
 * @param pack the packs at cruise power
 * @param endurance endurance on these packs
 * @param launch the launch; empty where no launch or no thrust is given
 */
public record ReviewTasks(
        BalanceTask balance,
        PackTask pack,
        EnduranceTask endurance,
        Optional<LaunchStallTask> launch) {}
