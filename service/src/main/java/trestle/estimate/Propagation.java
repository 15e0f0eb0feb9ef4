package trestle.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Carries what is not known through a model to its figures.
 *
 * <p>The model is worked at 64 points of a Latin hypercube (more where there are many unknowns); a sum of curves is
 * fitted to the logarithm of each figure (to the figure itself where it may be negative), and the band is that of many
 * points of the fitted form with its residuals. A raw sample would need ten times the points for the same accuracy.
 * Where the form explains less than 95 %, twice the points are worked, and where that does not help the band is that
 * of the raw sample, and says so. More than some sixty unknowns drop the squares of the form, twice as many the form.
 */
public final class Propagation {
    private static final int POINTS = 64;

    /** Beyond this the work would grow with what hardly matters one by one: the form drops its squares, then itself. */
    private static final int MOST_POINTS = 256;

    private static final int FORM_POINTS = 20_000;
    private static final double EXPLAINED = 0.95;

    /** With more draws than this without a solution, a fitted form would speak of the others only. */
    private static final double MOST_WITHOUT = 0.1;

    private final List<String> unknowns;
    private final List<String> figures;
    private final Set<String> signed;
    private final Function<Draw, Sampled> model;

    private Propagation(
            List<String> unknowns, List<String> figures, Set<String> signed, Function<Draw, Sampled> model) {
        this.unknowns = List.copyOf(unknowns);
        this.figures = List.copyOf(figures);
        this.signed = Set.copyOf(signed);
        this.model = model;
    }

    /**
     * How sure a model's figures are.
     *
     * @param unknowns names of what is not known, each drawn by itself
     * @param figures names of the figures wanted, the main one first
     * @param signed those of them that may be zero or negative
     * @param model gives the figures at a draw; must be pure, since it is worked on several threads
     * @param depth how thoroughly
     * @return the bands; the same for the same model on every machine
     */
    public static Uncertainty of(
            List<String> unknowns,
            List<String> figures,
            Set<String> signed,
            Function<Draw, Sampled> model,
            Depth depth) {
        if (unknowns.isEmpty()) {
            return Uncertainty.NONE;
        }
        Propagation propagation = new Propagation(unknowns, figures, signed, model);
        return depth == Depth.QUICK
                ? new OneAtATime(unknowns, figures, signed, model).uncertainty()
                : propagation.sampled();
    }

    private Uncertainty sampled() {
        int enough = Math.min(MOST_POINTS, Math.max(POINTS, 2 * (2 * unknowns.size() + 1)));
        Sample sample = Sample.of(unknowns, enough, model);
        if (!poorlyFitted(sample).isEmpty()) {
            sample = Sample.of(unknowns, 2 * enough, model);
        }
        return of(sample);
    }

    private List<String> poorlyFitted(Sample sample) {
        return figures.stream()
                .filter(figure -> fit(sample, figure)
                        .map(fit -> fit.form.explained() < EXPLAINED)
                        .orElse(false))
                .toList();
    }

    private Uncertainty of(Sample sample) {
        List<String> unfitted = new ArrayList<>();
        Map<String, Double> without = new LinkedHashMap<>();
        Map<String, Fit> fits = new LinkedHashMap<>();
        Map<String, Band> bands = new LinkedHashMap<>();
        for (String figure : figures) {
            List<Integer> points = sample.with(figure);
            if (points.size() < sample.z().length && !points.isEmpty()) {
                without.put(figure, 1 - sample.share(points));
            }
            if (!moves(sample.values(figure, points))) {
                continue;
            }
            var fit = fit(sample, figure);
            if (fit.isPresent() && fit.get().form.explained() >= EXPLAINED) {
                fits.put(figure, fit.get());
                bands.put(figure, null);
            } else {
                unfitted.add(figure);
                bands.put(figure, Quantiles.band(sample.values(figure, points)));
            }
        }
        fitted(fits).forEach(bands::put);
        Map<String, Double> shares = bands.keySet().stream()
                .findFirst()
                .flatMap(figure -> fit(sample, figure))
                .map(this::shares)
                .orElse(Map.of());
        return new Uncertainty(bands, shares, sample.stops(), without, unfitted);
    }

    /** A figure that no unknown touches has no band. */
    private static boolean moves(double[] values) {
        return Arrays.stream(values).anyMatch(value -> value != values[0]);
    }

    private Optional<Fit> fit(Sample sample, String figure) {
        List<Integer> points = sample.with(figure);
        boolean tooFew = points.size() < 2 * (unknowns.size() + 1) || sample.share(points) < 1 - MOST_WITHOUT;
        if (tooFew) {
            return Optional.empty();
        }
        double[] values = sample.values(figure, points);
        boolean log = !signed.contains(figure) && Arrays.stream(values).allMatch(v -> v > 0);
        double[] y = log ? Arrays.stream(values).map(Math::log).toArray() : values;
        return Optional.of(
                new Fit(FittedForm.of(sample.draws(points), y), log ? Math::exp : DoubleUnaryOperator.identity()));
    }

    /** A form with the way back from what was fitted to the figure. */
    private record Fit(FittedForm form, DoubleUnaryOperator back) {}

    private Map<String, Double> shares(Fit fit) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int j = 0; j < unknowns.size(); j++) {
            shares.put(unknowns.get(j), fit.form.share(j));
        }
        return shares;
    }

    /** The bands of the fitted forms, all from the same points. */
    private Map<String, Band> fitted(Map<String, Fit> fits) {
        double[][] values = new double[fits.size()][FORM_POINTS];
        List<Fit> forms = List.copyOf(fits.values());
        List<RandomGenerator> random = Arrays.stream(Sample.seeds(unknowns))
                .<RandomGenerator>mapToObj(seed -> new Well19937c(seed + 1))
                .toList();
        double[] z = new double[unknowns.size()];
        for (int point = 0; point < FORM_POINTS; point++) {
            for (int j = 0; j < z.length; j++) {
                z[j] = Math.max(
                        -Spread.FURTHEST,
                        Math.min(Spread.FURTHEST, random.get(j).nextGaussian()));
            }
            for (int f = 0; f < forms.size(); f++) {
                FittedForm form = forms.get(f).form;
                values[f][point] = forms.get(f).back.applyAsDouble(form.at(z) + form.residual(point));
            }
        }
        Map<String, Band> bands = new LinkedHashMap<>();
        int f = 0;
        for (String figure : fits.keySet()) {
            bands.put(figure, Quantiles.band(values[f++]));
        }
        return bands;
    }
}
