package trestle.endpoint;

import java.util.List;
import trestle.api.model.BuildReviewAnswer;
import trestle.api.model.BuildReviewRequest;
import trestle.api.model.Working;
import trestle.review.BuildReview;
import trestle.review.Review;
import trestle.review.ReviewWorkings;

/** The door of {@code /v1/build-review}: reads the document once, writes the answer once. */
final class BuildReviewEndpoint
        implements Calculation<BuildReviewRequest, BuildReviewAnswer>, Worked<BuildReviewRequest> {

    @Override
    public String name() {
        return "build-review";
    }

    @Override
    public Class<BuildReviewRequest> requestType() {
        return BuildReviewRequest.class;
    }

    @Override
    public BuildReviewAnswer answer(BuildReviewRequest request) {
        ReviewReading read = ReviewReading.of(request);
        Review review = BuildReview.of(read.aircraft());
        List<String> packs = request.packs().stream().map(p -> p.name()).toList();
        return new ReviewWriting(review, read, packs).answer();
    }

    @Override
    public List<Working> workings(BuildReviewRequest request) {
        Review review = BuildReview.of(ReviewReading.of(request).aircraft());
        return WorkingWriting.write(ReviewWorkings.of(review));
    }
}
