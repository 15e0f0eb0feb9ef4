package trestle.endpoint.buildreview;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trestle.endpoint.MainFigure;
import trestle.review.Review;

/** What of a review carries a band, and what of it forbids the flight. */
final class ReviewMainFigures {
    private ReviewMainFigures() {}

    /** Stall speed and power in cruise are those of the flight, which launch and drive have too. */
    static void of(Review review, Map<MainFigure, Double> figures) {
        List<Part<?>> parts = Parts.of(review);
        parts.forEach(part -> part.figures().accept(figures));
        Parts.at("/endurance", parts).ifPresent(part -> part.figures().accept(figures));
    }

    static Set<String> stops(Review review) {
        Set<String> stops = new HashSet<>(review.judgement().stops());
        Parts.of(review).forEach(part -> stops.addAll(part.judged().get().stops()));
        return stops;
    }
}
