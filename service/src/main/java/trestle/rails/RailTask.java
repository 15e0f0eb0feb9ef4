package trestle.rails;

import java.util.List;
import trestle.numeric.Guard;

/**
 * What a rail budget is asked.
 *
 * @param supply the pack
 * @param rails the rails
 */
public record RailTask(Supply supply, List<Rail> rails) {
    /** Copies the list. */
    public RailTask {
        Guard.present("supply", supply);
        rails = List.copyOf(rails);
    }
}
