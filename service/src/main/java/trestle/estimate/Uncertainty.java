package trestle.estimate;

import java.util.List;
import java.util.Map;

/**
 * How sure a model's figures are.
 *
 * @param bands of each figure that moves, by name, in the order asked for
 * @param shares of each unknown in the variance of the first figure that has a band, 0 to 1, by name
 * @param stops share of the draws that a stop hits, 0 to 1, by its code; empty where none was sampled
 * @param without share of the draws that lack a figure, 0 to 1, by name of the figure; only those that some draws lack
 * @param unfitted figures whose band is of the raw sample, since no sum of curves explains it
 */
public record Uncertainty(
        Map<String, Band> bands,
        Map<String, Double> shares,
        Map<String, Double> stops,
        Map<String, Double> without,
        List<String> unfitted) {
    /** Nothing is unknown. */
    public static final Uncertainty NONE = new Uncertainty(Map.of(), Map.of(), Map.of(), Map.of(), List.of());
}
