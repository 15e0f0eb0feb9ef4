package trestle.endpoint.buildreview;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trestle.figure.Theme;
import trestle.review.Review;
import trestle.review.RunReview;

/** The figures of a reviewed aircraft, in an order in which they fill a page of two columns. */
public final class ReviewFigures {
    /** Paper is white. */
    private static final Theme THEME = Theme.LIGHT;

    private ReviewFigures() {}

    static List<String> of(Review review, List<Part<?>> parts) {
        return Stream.of(
                        Optional.of("/pack_energy"),
                        Optional.of("/mass_balance"),
                        mainWire(review.runs()).map(index -> "/wire_sizing/" + index),
                        Optional.of("/endurance"),
                        Optional.of("/propulsion_match"),
                        Optional.of("/launch_and_climb"))
                .flatMap(Optional::stream)
                .flatMap(place -> Parts.at(place, parts).stream())
                .map(part -> part.figure().apply(THEME))
                .toList();
    }

    /** Which is the longest that carries the current of the packs; empty where none is described. */
    private static Optional<Integer> mainWire(List<RunReview> runs) {
        return IntStream.range(0, runs.size())
                .boxed()
                .filter(i -> runs.get(i).carriesPackCurrent())
                .max(Comparator.comparingDouble(i -> runs.get(i).task().run().lengthM()));
    }
}
