package trestle.massbalance;

import java.util.List;
import java.util.Optional;

/**
 * Ways to bring the CG to the target; each is a way of its own, not a step of one plan.
 *
 * @param targetArmM the target, m aft of the datum
 * @param alone each movable item moved alone, in the order of the list
 * @param together all movable items moved; empty without one
 * @param ballast masses at the places that the aircraft has, the least first, where that can help
 */
public record Aim(double targetArmM, List<Move> alone, Optional<JointMove> together, List<Ballast> ballast) {
    /** Copies the lists. */
    public Aim {
        alone = List.copyOf(alone);
        ballast = List.copyOf(ballast);
    }

    /**
     * Whether moving what can be moved gets there.
     *
     * @return true where one item alone or all together reach the target
     */
    public boolean reachable() {
        return alone.stream().anyMatch(Move::reachable)
                || together.filter(JointMove::reachesTarget).isPresent();
    }
}
