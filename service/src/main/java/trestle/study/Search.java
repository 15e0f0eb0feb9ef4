package trestle.study;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import trestle.api.model.ApiSolveObjective;
import trestle.binding.Refusal;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.numeric.Root;

/**
 * Finds where a figure meets a target, or where it is largest or smallest: first it is seen at even steps between the ends,
 * so that a target met more than once is noticed, then each place is closed in on by Brent's methods.
 */
final class Search {
    private static final int STEPS = 32;
    private static final double ACCURACY = 1e-10;
    private static final int MOST_EVALUATIONS = 100;

    private final SolveForTask task;
    private final JsonPointer at;
    private final AtomicInteger runs = new AtomicInteger();

    private Search(SolveForTask task) {
        this.task = task;
        this.at = JsonPointer.compile(task.at().pointer());
    }

    static SolveForResult of(SolveForTask task) {
        return new Search(task).result();
    }

    private SolveForResult result() {
        List<SolveForResult.CurvePoint> curve = Runs.of(STEPS + 1, i -> point((double) i / STEPS));
        List<Double> found = task.objective() == ApiSolveObjective.EQUAL ? crossings(curve) : extreme(curve);
        OptionalDouble value = found.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(found.get(0));
        OptionalDouble picked = value.isPresent() ? figure(value.getAsDouble()) : OptionalDouble.empty();
        return new SolveForResult(value, picked, found, runs.get(), curve, judgement(curve, found));
    }

    private SolveForResult.CurvePoint point(double share) {
        double value = task.value(share);
        return new SolveForResult.CurvePoint(value, figure(value));
    }

    /** The figure where the field has a value; empty where the calculation refuses it, or has no such figure. */
    private OptionalDouble figure(double value) {
        runs.incrementAndGet();
        try {
            var number = task.studied()
                    .answer(Map.of(at, DoubleNode.valueOf(value)))
                    .at(task.pick().pointer());
            return number.isNumber() ? OptionalDouble.of(number.doubleValue()) : OptionalDouble.empty();
        } catch (Refusal refused) {
            return OptionalDouble.empty();
        }
    }

    private DoubleUnaryOperator overShare() {
        return share -> figure(task.value(share)).orElse(Double.NaN);
    }

    private List<Double> crossings(List<SolveForResult.CurvePoint> curve) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            OptionalDouble here = curve.get(i).value();
            if (here.isEmpty()) {
                continue;
            }
            double above = here.getAsDouble() - task.target();
            if (above == 0) {
                found.add(curve.get(i).at());
            } else if (i < STEPS && curve.get(i + 1).value().isPresent()) {
                double next = curve.get(i + 1).value().getAsDouble() - task.target();
                if (above * next < 0) {
                    crossing((double) i / STEPS, (double) (i + 1) / STEPS).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private OptionalDouble crossing(double fromShare, double toShare) {
        DoubleUnaryOperator above = share -> overShare().applyAsDouble(share) - task.target();
        OptionalDouble share = Root.between(above, fromShare, toShare, ACCURACY);
        return share.isPresent() ? OptionalDouble.of(task.value(share.getAsDouble())) : OptionalDouble.empty();
    }

    private List<Double> extreme(List<SolveForResult.CurvePoint> curve) {
        double sign = task.objective() == ApiSolveObjective.LARGEST ? 1 : -1;
        int best = IntStream.rangeClosed(0, STEPS)
                .filter(i -> curve.get(i).value().isPresent())
                .reduce((a, b) -> sign * curve.get(b).value().getAsDouble()
                                > sign * curve.get(a).value().getAsDouble()
                        ? b
                        : a)
                .orElse(-1);
        if (best < 0) {
            return List.of();
        }
        double from = Math.max(0, best - 1) / (double) STEPS;
        double to = Math.min(STEPS, best + 1) / (double) STEPS;
        var optimum = new BrentOptimizer(ACCURACY, ACCURACY)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        new SearchInterval(from, to),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(share -> {
                            double figure = overShare().applyAsDouble(share);
                            return Double.isNaN(figure) ? -Double.MAX_VALUE : sign * figure;
                        }));
        boolean better = optimum.getValue() >= sign * curve.get(best).value().getAsDouble();
        return List.of(better ? task.value(optimum.getPoint()) : curve.get(best).at());
    }

    private Judgement judgement(List<SolveForResult.CurvePoint> curve, List<Double> found) {
        Judge judge = new Judge();
        Subject target = Subject.of(StudyPart.TARGET);
        judge.check("target-met", "the target between the ends", target, trial -> {
            trial.attentionIf(found.isEmpty(), "target-not-met", "%s", nowhere(curve));
            trial.attentionIf(
                    found.size() > 1,
                    "target-met-often",
                    "The target is met at %d values between the ends, of which the first is answered: see crossings.",
                    found.size());
        });
        long without = curve.stream().filter(point -> point.value().isEmpty()).count();
        judge.check(
                "figure-everywhere",
                "the figure between the ends",
                Subject.of(StudyPart.VARIED),
                trial -> trial.noteIf(
                        without > 0 && without <= STEPS,
                        "figure-missing",
                        "At %d of %d values between the ends there is no such figure: a target may be met between them.",
                        without,
                        STEPS + 1));
        return judge.judgement();
    }

    private String nowhere(List<SolveForResult.CurvePoint> curve) {
        var figures = curve.stream()
                .flatMap(point -> point.value().stream().boxed())
                .mapToDouble(v -> v)
                .summaryStatistics();
        return figures.getCount() == 0
                ? "There is no such figure at any value between the ends."
                : Judge.text(
                        "The target is met nowhere between the ends: the figure runs from %.6g to %.6g.",
                        figures.getMin(), figures.getMax());
    }
}
