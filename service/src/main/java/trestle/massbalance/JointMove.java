package trestle.massbalance;

import java.util.List;

/**
 * All movable items moved together, with the least sum of squared moves.
 *
 * @param moves one a movable item, in the order of the list, each within its travel
 * @param cgArmM CG after them, m
 * @param reachesTarget whether that is the target; if not, it is as near as the travels allow
 */
public record JointMove(List<Move> moves, double cgArmM, boolean reachesTarget) {
    /** Copies the list. */
    public JointMove {
        moves = List.copyOf(moves);
    }
}
