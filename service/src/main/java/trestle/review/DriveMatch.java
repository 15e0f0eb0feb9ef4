package trestle.review;

import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionTask;

/**
 * The drive as the review judged it.
 *
 * @param task the drive on these packs, and what cruise asks of it
 * @param match how its parts go together
 */
public record DriveMatch(PropulsionTask task, PropulsionMatch match) {}
