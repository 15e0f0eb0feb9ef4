package trestle.endpoint;

import java.util.List;
import java.util.Optional;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiWorking;
import trestle.figure.BalanceFigure;
import trestle.figure.Theme;
import trestle.review.BuildReview;
import trestle.review.Review;
import trestle.review.ReviewWorkings;

/**
 * The door of {@code /v1/build-review}: reads the document once, writes the answer once. Its figure
 * is the balance, where every part of the aircraft shows; the others are picked, and its sheet has
 * them all.
 */
final class BuildReviewEndpoint
        implements Calculation<ApiBuildReviewRequest, ApiBuildReviewAnswer>,
                Drawn<ApiBuildReviewRequest>,
                DrawnInParts<ApiBuildReviewRequest>,
                Printed<ApiBuildReviewRequest>,
                Worked<ApiBuildReviewRequest> {

    @Override
    public String name() {
        return "build-review";
    }

    @Override
    public Class<ApiBuildReviewRequest> requestType() {
        return ApiBuildReviewRequest.class;
    }

    @Override
    public ApiBuildReviewAnswer answer(ApiBuildReviewRequest request) {
        ReviewReading read = ReviewReading.of(request);
        return answer(request, read, BuildReview.of(read.aircraft()));
    }

    @Override
    public String figure(ApiBuildReviewRequest request, Theme theme) {
        Review review = BuildReview.of(ReviewReading.of(request).aircraft());
        return BalanceFigure.of(review.tasks().balance(), review.balance(), theme);
    }

    @Override
    public boolean draws(String pointer) {
        return ReviewParts.has(pointer);
    }

    @Override
    public Optional<String> figure(ApiBuildReviewRequest request, String pointer, Theme theme) {
        Review review = BuildReview.of(ReviewReading.of(request).aircraft());
        return ReviewParts.figure(review, pointer, theme);
    }

    @Override
    public String sheet(ApiBuildReviewRequest request) {
        ReviewReading read = ReviewReading.of(request);
        Review review = BuildReview.of(read.aircraft());
        return ReviewSheet.of(
                        Optional.ofNullable(request.name()), answer(request, read, review), ReviewFigures.of(review))
                .html();
    }

    @Override
    public List<ApiWorking> workings(ApiBuildReviewRequest request) {
        Review review = BuildReview.of(ReviewReading.of(request).aircraft());
        return WorkingWriting.write(ReviewWorkings.of(review));
    }

    private static ApiBuildReviewAnswer answer(ApiBuildReviewRequest request, ReviewReading read, Review review) {
        List<String> packs = request.packs().stream().map(p -> p.name()).toList();
        return new ReviewWriting(review, read, packs).answer();
    }
}
