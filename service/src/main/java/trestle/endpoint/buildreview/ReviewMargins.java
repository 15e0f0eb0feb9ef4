package trestle.endpoint.buildreview;

import java.util.stream.Stream;
import trestle.finding.Working;
import trestle.joint.GoAroundWorkings;
import trestle.motorout.MotorOutWorkings;
import trestle.review.Review;

/** What a review works out of its parts together. */
final class ReviewMargins {
    private ReviewMargins() {}

    /** How its numbers were reached, each line with the name of its margin. */
    static Stream<Working> workings(Review review) {
        Stream<Working> goAround = review.goAround().stream()
                .flatMap(go -> GoAroundWorkings.of(review.goAroundTask().orElseThrow(), go).stream())
                .map(line -> line.about("go-around"));
        Stream<Working> motorOut = review.motorOut().stream()
                .flatMap(it -> MotorOutWorkings.of(it.task(), it.out()).stream())
                .map(line -> line.about("one motor out"));
        return Stream.concat(goAround, motorOut);
    }
}
