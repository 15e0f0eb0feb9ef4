package trestle.massbalance;

import java.util.List;
import java.util.Optional;
import trestle.numeric.Guard;
import trestle.numeric.ImpossibleValue;

/**
 * What mass and balance is asked.
 *
 * @param items what the aircraft is made of, at least one
 * @param weighing the aircraft on scales
 * @param wing the wing; needed for anything in shares of the mean chord
 * @param tail the tail, or that there is none; needed for the neutral point
 * @param fuselage its shape, where the request tells it
 * @param limits what the result is held against
 * @param target where the CG should be
 */
public record BalanceTask(
        List<Item> items,
        Optional<Weighing> weighing,
        Optional<Wing> wing,
        Optional<TailArrangement> tail,
        Optional<Fuselage> fuselage,
        Optional<Limits> limits,
        Optional<Target> target) {
    /** Copies the list; there is an item. */
    public BalanceTask {
        items = List.copyOf(items);
        if (items.isEmpty()) {
            throw new ImpossibleValue("items", "a balance needs at least one item");
        }
        Guard.present("weighing", weighing);
        Guard.present("wing", wing);
        Guard.present("tail", tail);
        Guard.present("fuselage", fuselage);
        Guard.present("limits", limits);
        Guard.present("target", target);
        boolean hasTail = tail.filter(Tail.class::isInstance).isPresent();
        for (Item item : items) {
            Spread spread = item.spread().orElse(null);
            if (spread instanceof Spread.OverWing && wing.isEmpty() || spread instanceof Spread.OverTail && !hasTail) {
                throw new ImpossibleValue("items", "an item is spread over a wing or tail that is not there");
            }
        }
    }

    /**
     * A task that does not tell the fuselage's shape.
     *
     * @param items what the aircraft is made of, at least one
     * @param weighing the aircraft on scales
     * @param wing the wing
     * @param tail the tail, or that there is none
     * @param limits what the result is held against
     * @param target where the CG should be
     */
    public BalanceTask(
            List<Item> items,
            Optional<Weighing> weighing,
            Optional<Wing> wing,
            Optional<TailArrangement> tail,
            Optional<Limits> limits,
            Optional<Target> target) {
        this(items, weighing, wing, tail, Optional.empty(), limits, target);
    }
}
