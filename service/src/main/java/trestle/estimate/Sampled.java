package trestle.estimate;

import java.util.Map;
import java.util.Set;

/**
 * What a model gave at one draw.
 *
 * @param figures its numbers by name; one that has no solution at this draw is absent
 * @param stops codes of what forbids the flight at this draw
 */
public record Sampled(Map<String, Double> figures, Set<String> stops) {
    /** A draw at which the model has no solution at all. */
    public static final Sampled NONE = new Sampled(Map.of(), Set.of());

    /** Copies both. */
    public Sampled {
        figures = Map.copyOf(figures);
        stops = Set.copyOf(stops);
    }
}
