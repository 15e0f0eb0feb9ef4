package trestle.endpoint.buildreview;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trestle.endpoint.launch.LaunchStallEndpoint;
import trestle.figure.BalanceFigure;
import trestle.figure.EnduranceFigure;
import trestle.figure.PackFigure;
import trestle.figure.PropulsionFigure;
import trestle.figure.Theme;
import trestle.figure.WireFigure;
import trestle.review.Review;
import trestle.review.ReviewTasks;
import trestle.review.RunReview;

/** The figures of a reviewed aircraft, in an order in which they fill a page of two columns. */
public final class ReviewFigures {
    /** Paper is white. */
    private static final Theme THEME = Theme.LIGHT;

    private ReviewFigures() {}

    static List<String> of(Review review) {
        ReviewTasks tasks = review.tasks();
        return Stream.of(
                        Optional.of(PackFigure.of(tasks.pack(), review.pack(), THEME)),
                        Optional.of(BalanceFigure.of(tasks.balance(), review.balance(), THEME)),
                        mainWire(review.runs()).map(run -> WireFigure.of(run.task(), run.sizing(), THEME)),
                        Optional.of(EnduranceFigure.of(tasks.endurance(), review.endurance(), THEME)),
                        review.propulsion().map(d -> PropulsionFigure.of(d.task(), d.match(), THEME)),
                        tasks.launch()
                                .flatMap(task ->
                                        review.launch().map(result -> LaunchStallEndpoint.figure(task, result, THEME))))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The longest that carries the current of the packs; empty where none is described. */
    private static Optional<RunReview> mainWire(List<RunReview> runs) {
        return runs.stream()
                .filter(RunReview::carriesPackCurrent)
                .max(Comparator.comparingDouble(run -> run.task().run().lengthM()));
    }
}
