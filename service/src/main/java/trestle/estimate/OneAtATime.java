package trestle.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Each unknown alone at its 10 and 90 % points: two runs an unknown. The widths add by squares; the middle is the
 * answer at the medians, which lies some per cent off where the model is curved.
 *
 * @param unknowns their names
 * @param figures names of the figures
 * @param signed those that may be zero or negative
 * @param model gives the figures at a draw
 */
record OneAtATime(List<String> unknowns, List<String> figures, Set<String> signed, Function<Draw, Sampled> model) {

    Uncertainty uncertainty() {
        Sampled middle = model.apply(Draw.MEDIANS);
        List<Sampled> low = each(-Spread.Z90);
        List<Sampled> high = each(Spread.Z90);
        Map<String, Band> bands = new LinkedHashMap<>();
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String figure : figures) {
            Double at = middle.figures().get(figure);
            if (at == null) {
                continue;
            }
            boolean log = !signed.contains(figure) && at > 0;
            double[] swings = IntStream.range(0, unknowns.size())
                    .mapToDouble(j -> swing(figure, low.get(j), high.get(j), log))
                    .toArray();
            double width = Math.sqrt(IntStream.range(0, swings.length)
                    .mapToDouble(j -> swings[j] * swings[j])
                    .sum());
            if (width == 0) {
                continue;
            }
            bands.put(
                    figure,
                    log
                            ? new Band(at * Math.exp(-width), at, at * Math.exp(width))
                            : new Band(at - width, at, at + width));
            if (shares.isEmpty()) {
                for (int j = 0; j < swings.length; j++) {
                    shares.put(unknowns.get(j), swings[j] * swings[j] / (width * width));
                }
            }
        }
        return new Uncertainty(bands, shares, Map.of(), Map.of(), List.of());
    }

    private List<Sampled> each(double z) {
        return IntStream.range(0, unknowns.size())
                .parallel()
                .mapToObj(j -> model.apply(unknown -> unknown.equals(unknowns.get(j)) ? z : 0))
                .toList();
    }

    /** Half of the way from one point to the other; a side without a solution does not count. */
    private double swing(String figure, Sampled low, Sampled high, boolean log) {
        Double from = low.figures().get(figure);
        Double to = high.figures().get(figure);
        if (from == null || to == null || (log && (from <= 0 || to <= 0))) {
            return 0;
        }
        return log ? Math.log(to / from) / 2 : (to - from) / 2;
    }
}
