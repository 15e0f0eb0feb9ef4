package trestle.flight;

import java.util.List;
import java.util.Optional;

/**
 * Steps drawn from a store one after another.
 *
 * @param steps one for each step that was begun, in order
 * @param end why the store ended within the last of them; empty where every step was flown to its
 *     end
 */
public record Plan(List<FlownStep> steps, Optional<StoreEnd> end) {
    /** Copies the list. */
    public Plan {
        steps = List.copyOf(steps);
    }
}
