package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trestle.binding.FieldPath;
import trestle.binding.Refusal;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;

/**
 * How figures go with numbers.
 *
 * @param runs how often the calculation was run
 * @param figures each with what moves it
 * @param judgement what is to be said of it
 */
record SensitivityResult(int runs, List<Figure> figures, Judgement judgement) {
    private static final double STEP = 0.01;
    private static final double WIDE = 0.1;

    /** A number that is 0 has no hundredth: it is moved by so much of its unit. */
    private static final double STEP_FROM_ZERO = 0.01;

    /** Less than this is as good as 0 in every unit of the contract; its hundredth would divide to what is no number. */
    private static final double LEAST_VALUE = 1e-9;

    private static boolean isNone(double value) {
        return Math.abs(value) < LEAST_VALUE;
    }

    /** A figure, and the effects on it, greatest first. */
    record Figure(FieldPath pick, OptionalDouble value, List<Effect> effects) {}

    /** What a number does to a figure; empty where the calculation has no such figure on a side. */
    record Effect(
            FieldPath at,
            double value,
            OptionalDouble percentPerPercent,
            OptionalDouble perUnit,
            OptionalDouble low,
            OptionalDouble high) {}

    /** The four answers about one number. */
    private record Moved(
            FieldPath at,
            double value,
            double step,
            Optional<JsonNode> below,
            Optional<JsonNode> above,
            Optional<JsonNode> low,
            Optional<JsonNode> high) {}

    static SensitivityResult of(SensitivityTask task) {
        JsonNode middle = task.studied().answer(Map.of());
        List<Moved> moved = Runs.of(
                task.numbers().size(), i -> moved(task.studied(), task.numbers().get(i)));
        List<Figure> figures = new ArrayList<>();
        for (FieldPath pick : task.studied().picks()) {
            OptionalDouble value = number(Optional.of(middle), pick);
            figures.add(new Figure(
                    pick,
                    value,
                    moved.stream()
                            .map(m -> effect(m, pick, value))
                            .sorted(Comparator.comparingDouble(SensitivityResult::rank)
                                    .reversed())
                            .toList()));
        }
        return new SensitivityResult(1 + 4 * moved.size(), figures, judgement(figures));
    }

    private static Moved moved(Studied<?, ?, ?> studied, FieldPath at) {
        double value = studied.number(at).orElseThrow();
        double step = isNone(value) ? STEP_FROM_ZERO : Math.abs(value) * STEP;
        double wide = isNone(value) ? WIDE : Math.abs(value) * WIDE;
        return new Moved(
                at,
                value,
                step,
                answer(studied, at, value - step),
                answer(studied, at, value + step),
                answer(studied, at, value - wide),
                answer(studied, at, value + wide));
    }

    private static Optional<JsonNode> answer(Studied<?, ?, ?> studied, FieldPath at, double value) {
        try {
            return Optional.of(studied.answer(Map.of(JsonPointer.compile(at.pointer()), DoubleNode.valueOf(value))));
        } catch (Refusal refused) {
            return Optional.empty();
        }
    }

    /** A side that is refused, since a range ends there, leaves the other: a one-sided difference. */
    private static Effect effect(Moved moved, FieldPath pick, OptionalDouble middle) {
        OptionalDouble below = number(moved.below(), pick);
        OptionalDouble above = number(moved.above(), pick);
        double sides = (below.isPresent() ? 1 : 0) + (above.isPresent() ? 1 : 0);
        OptionalDouble perUnit = middle.isEmpty() || sides == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((above.orElse(middle.getAsDouble()) - below.orElse(middle.getAsDouble()))
                        / (sides * moved.step()));
        boolean relative = perUnit.isPresent() && !isNone(moved.value()) && middle.getAsDouble() != 0;
        return new Effect(
                moved.at(),
                moved.value(),
                relative
                        ? OptionalDouble.of(perUnit.getAsDouble() * moved.value() / middle.getAsDouble())
                        : OptionalDouble.empty(),
                perUnit,
                number(moved.low(), pick),
                number(moved.high(), pick));
    }

    /** By what a hundredth of the number does; one that is 0 by what its step did. */
    private static double rank(Effect effect) {
        return Math.abs(effect.percentPerPercent().orElse(effect.perUnit().orElse(0) * STEP_FROM_ZERO * 1e-3));
    }

    private static OptionalDouble number(Optional<JsonNode> answer, FieldPath pick) {
        return answer.map(tree -> tree.at(pick.pointer()))
                .filter(JsonNode::isNumber)
                .map(value -> OptionalDouble.of(value.doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    private static Judgement judgement(List<Figure> figures) {
        Judge judge = new Judge();
        long without =
                figures.stream().filter(figure -> figure.value().isEmpty()).count();
        judge.check(
                "figures-answered",
                "the picked figures of the base",
                Subject.of(StudyPart.PICKS),
                trial -> trial.attentionIf(
                        without > 0,
                        "figure-absent",
                        "The base's own answer lacks %d of %d picked figures, so nothing can be said of what moves them.",
                        without,
                        figures.size()));
        return judge.judgement();
    }
}
