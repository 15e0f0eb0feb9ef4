package trestle.endpoint.buildreview;

import java.util.List;
import java.util.stream.Stream;
import trestle.finding.Working;
import trestle.joint.GoAroundWorkings;
import trestle.motorout.MotorOutWorkings;
import trestle.review.Review;

/** What a review works out of its parts together. */
final class ReviewMargins {
    private static final String GO_AROUND_CAUTION =
            "A go-around on the last of a pack is estimated where the cell model is weakest, cold and near empty: prove it at"
                    + " height before relying on it near the ground, and land with more.";

    private static final String MOTOR_OUT_CAUTION =
            "An aircraft of several motors that yaws at low speed can depart before any rudder answers: practise one motor"
                    + " stopped at height, or do not.";

    private static final String GO_AROUND_MODEL =
            "go-around: cells followed through the flight and then at full power on the voltage as it sags";

    private static final String MOTOR_OUT_MODEL =
            "one motor out: fin after Helmbold, rudder by thin aerofoils (Houghton and Carpenter), dead propeller by blade"
                    + " elements, never checked braking";

    private ReviewMargins() {}

    /** What to heed of them. */
    static List<String> cautions(Review review) {
        return said(review, GO_AROUND_CAUTION, MOTOR_OUT_CAUTION);
    }

    /** What they are worked out with. */
    static List<String> models(Review review) {
        return said(review, GO_AROUND_MODEL, MOTOR_OUT_MODEL);
    }

    private static List<String> said(Review review, String ofGoAround, String ofMotorOut) {
        return Stream.concat(
                        review.goAround().stream().map(go -> ofGoAround),
                        review.motorOut().stream().map(out -> ofMotorOut))
                .toList();
    }

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
