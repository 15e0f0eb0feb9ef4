package trestle.figure;

import java.util.List;
import java.util.function.Consumer;

/**
 * One plot of several that share the level axis.
 *
 * @param heading the quantity and its unit
 * @param keys what its signs stand for
 * @param height of the plot
 * @param y upright axis
 * @param drawing draws bands, curves and marks
 */
record Panel(String heading, List<KeyEntry> keys, double height, Axis y, Consumer<Plot> drawing) {
    static final double TALL = 108;
    static final double LOW = 72;

    /** Copies the list. */
    Panel {
        keys = List.copyOf(keys);
    }
}
