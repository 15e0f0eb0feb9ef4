package trestle.rails;

import java.util.List;
import trestle.finding.Judgement;

/**
 * What the rails carry and draw.
 *
 * @param rails one a rail, in their order
 * @param systemsPowerW mean power of all rails from the pack, W
 * @param peakPowerW power of all rails at their peaks together, W
 * @param judgement what is to be said of it
 */
public record RailBudget(List<RailLoad> rails, double systemsPowerW, double peakPowerW, Judgement judgement) {
    /** Copies the list. */
    public RailBudget {
        rails = List.copyOf(rails);
    }
}
