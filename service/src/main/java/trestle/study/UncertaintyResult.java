package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import trestle.binding.FieldPath;
import trestle.binding.Refusal;
import trestle.estimate.FittedForm;
import trestle.estimate.LatinHypercube;
import trestle.estimate.Spread;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;

/**
 * How figures are spread.
 *
 * @param failed draws that the calculation refused
 * @param figures in the order of the picks
 * @param stops share of the draws that each stop hits, 0 to 1, by its code
 * @param judgement what is to be said of it
 */
record UncertaintyResult(int failed, List<Figure> figures, Map<String, Double> stops, Judgement judgement) {
    private static final double EXPLAINED = 0.95;

    /**
     * A figure over all draws.
     *
     * @param pick its pointer
     * @param values at the draws that have it
     * @param influence share of each number in the variance; empty where no sum of curves explains it
     */
    record Figure(FieldPath pick, double[] values, Map<String, Double> influence) {
        DescriptiveStatistics statistics() {
            return new DescriptiveStatistics(values);
        }
    }

    static UncertaintyResult of(UncertaintyTask task) {
        int columns = task.uncertain().size() + task.unknowns().size();
        double[][] shares = LatinHypercube.shares(task.samples(), columns, task.seed());
        double[][] z = LatinHypercube.normal(task.samples(), columns, task.seed());
        List<Optional<Studied.Ran>> ran = Runs.of(task.samples(), i -> ran(task, shares[i], z[i]));
        int failed = (int) ran.stream().filter(Optional::isEmpty).count();
        List<Figure> figures = task.studied().picks().stream()
                .map(pick -> figure(task, pick, ran, z))
                .toList();
        return new UncertaintyResult(failed, figures, stops(ran), judgement(task, failed, figures));
    }

    private static Optional<Studied.Ran> ran(UncertaintyTask task, double[] shares, double[] z) {
        Map<JsonPointer, JsonNode> values = new LinkedHashMap<>();
        for (int j = 0; j < task.uncertain().size(); j++) {
            Uncertain number = task.uncertain().get(j);
            values.put(number.pointer(), DoubleNode.valueOf(number.at(shares[j])));
        }
        Map<String, Double> deviates = new HashMap<>();
        for (int j = 0; j < task.unknowns().size(); j++) {
            double deviate = z[task.uncertain().size() + j];
            deviates.put(task.unknowns().get(j), Math.max(-Spread.FURTHEST, Math.min(Spread.FURTHEST, deviate)));
        }
        try {
            return Optional.of(task.studied().drawn(values, unknown -> deviates.getOrDefault(unknown, 0.0)));
        } catch (Refusal refused) {
            return Optional.empty();
        }
    }

    private static Figure figure(UncertaintyTask task, FieldPath pick, List<Optional<Studied.Ran>> ran, double[][] z) {
        List<double[]> draws = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < ran.size(); i++) {
            OptionalDouble value = ran.get(i).map(r -> r.number(pick)).orElse(OptionalDouble.empty());
            if (value.isPresent()) {
                draws.add(z[i]);
                values.add(value.getAsDouble());
            }
        }
        double[] all = values.stream().mapToDouble(v -> v).toArray();
        return new Figure(pick, all, influence(task, draws.toArray(double[][]::new), all));
    }

    private static Map<String, Double> influence(UncertaintyTask task, double[][] z, double[] values) {
        int columns = task.uncertain().size() + task.unknowns().size();
        if (columns == 0
                || values.length < 2 * (columns + 1)
                || Arrays.stream(values).distinct().count() < 2) {
            return Map.of();
        }
        FittedForm form = FittedForm.of(z, values);
        if (form.explained() < EXPLAINED) {
            return Map.of();
        }
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int j = 0; j < columns; j++) {
            int own = j - task.uncertain().size();
            shares.put(
                    own < 0
                            ? task.uncertain().get(j).path().pointer()
                            : task.unknowns().get(own),
                    form.share(j));
        }
        return shares.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
    }

    private static Map<String, Double> stops(List<Optional<Studied.Ran>> ran) {
        Map<String, Double> shares = new TreeMap<>();
        ran.stream()
                .flatMap(Optional::stream)
                .map(Studied.Ran::stops)
                .flatMap(Set::stream)
                .forEach(code -> shares.merge(code, 1.0 / ran.size(), Double::sum));
        return shares.entrySet().stream()
                .sorted(Comparator.comparingDouble(entry -> -entry.getValue()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new));
    }

    private static Judgement judgement(UncertaintyTask task, int failed, List<Figure> figures) {
        Judge judge = new Judge();
        judge.check(
                "draws-answered",
                "the draws",
                Subject.of(StudyPart.UNCERTAIN),
                trial -> trial.attentionIf(
                        failed > 0,
                        "draws-refused",
                        "At %d of %d draws the calculation refuses its request: the figures speak of the others only.",
                        failed,
                        task.samples()));
        long without = figures.stream()
                .filter(figure -> figure.values().length < task.samples() - failed)
                .count();
        judge.check(
                "figures-drawn",
                "the picked figures at the draws",
                Subject.of(StudyPart.PICKS),
                trial -> trial.attentionIf(
                        without > 0,
                        "figure-absent-at-draws",
                        "%d of %d picked figures are absent at some draws: their spread speaks of the others only.",
                        without,
                        figures.size()));
        return judge.judgement();
    }
}
