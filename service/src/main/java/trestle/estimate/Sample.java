package trestle.estimate;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A model worked at the points of a Latin hypercube.
 *
 * @param z one row a point, one column an unknown
 * @param results what the model gave, point by point
 */
record Sample(double[][] z, List<Sampled> results) {
    /** Fixed, so that one request has one answer. */
    private static final long SEED = 0xcbf29ce484222325L;

    static Sample of(List<String> unknowns, int points, Function<Draw, Sampled> model) {
        double[][] z = LatinHypercube.normal(points, seeds(unknowns));
        for (double[] row : z) {
            for (int j = 0; j < row.length; j++) {
                row[j] = Math.max(-Spread.FURTHEST, Math.min(Spread.FURTHEST, row[j]));
            }
        }
        return new Sample(z, worked(columns(unknowns), z, model));
    }

    /** By name, so that an unknown keeps its draws when others become known, and a band can only narrow. */
    static long[] seeds(List<String> unknowns) {
        return unknowns.stream().mapToLong(Sample::seed).toArray();
    }

    /** The hash of Fowler, Noll and Vo, 64 bits, variant 1a: the same on every machine. */
    private static long seed(String unknown) {
        long hash = SEED;
        for (byte letter : unknown.getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ letter) * 0x100000001b3L;
        }
        return hash;
    }

    /** On all cores; each result stands at its point's place, so that the order of working does not show. */
    private static List<Sampled> worked(Map<String, Integer> columns, double[][] z, Function<Draw, Sampled> model) {
        return IntStream.range(0, z.length)
                .parallel()
                .mapToObj(point -> model.apply(draw(columns, z[point])))
                .toList();
    }

    private static Map<String, Integer> columns(List<String> unknowns) {
        Map<String, Integer> columns = new HashMap<>();
        for (String unknown : unknowns) {
            columns.put(unknown, columns.size());
        }
        return columns;
    }

    /** What a draw asks for that the middle did not stays at its middle. */
    private static Draw draw(Map<String, Integer> columns, double[] z) {
        return unknown -> {
            Integer column = columns.get(unknown);
            return column == null ? 0 : z[column];
        };
    }

    /** The points at which a figure has a value. */
    List<Integer> with(String figure) {
        List<Integer> points = new ArrayList<>();
        for (int point = 0; point < z.length; point++) {
            if (results.get(point).figures().containsKey(figure)) {
                points.add(point);
            }
        }
        return points;
    }

    double[] values(String figure, List<Integer> points) {
        return points.stream()
                .mapToDouble(point -> results.get(point).figures().get(figure))
                .toArray();
    }

    double[][] draws(List<Integer> points) {
        return points.stream().map(point -> z[point]).toArray(double[][]::new);
    }

    double share(List<Integer> points) {
        return (double) points.size() / z.length;
    }

    Map<String, Double> stops() {
        Set<String> codes = results.stream().flatMap(r -> r.stops().stream()).collect(Collectors.toSet());
        Map<String, Double> shares = new TreeMap<>();
        for (String code : codes) {
            long hit = results.stream().filter(r -> r.stops().contains(code)).count();
            shares.put(code, (double) hit / results.size());
        }
        return shares;
    }
}
