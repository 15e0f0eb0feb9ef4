package trestle.endpoint.buildreview;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trestle.endpoint.MainFigure;
import trestle.review.Review;

/** What of a review carries a band, and what of it forbids the flight. */
final class ReviewMainFigures {
    /** They carry no main figure and follow from the flight: a draw of what is not known is not taken through them. */
    private static final Set<String> AFTER_THE_FLIGHT = Set.of("pack-charge", "survey-coverage");

    private ReviewMainFigures() {}

    /** Stall speed and power in cruise are those of the flight, which launch and drive have too. */
    static void of(Review review, Map<MainFigure, Double> figures) {
        List<Part<?>> parts = Parts.of(review);
        parts.forEach(part -> part.figures().accept(figures));
        Parts.at("/endurance", parts).ifPresent(part -> part.figures().accept(figures));
    }

    static Set<String> stops(Review review) {
        Set<String> stops = new HashSet<>(review.stops());
        Parts.of(review).stream()
                .filter(part -> !AFTER_THE_FLIGHT.contains(part.calculation()))
                .forEach(part -> stops.addAll(part.judged().get().stops()));
        return stops;
    }
}
