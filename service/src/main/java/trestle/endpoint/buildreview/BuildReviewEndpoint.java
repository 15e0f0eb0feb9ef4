package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.BalanceFigure;
import trestle.figure.Theme;
import trestle.review.Aircraft;
import trestle.review.BuildReview;
import trestle.review.Review;

/**
 * The door of {@code /v1/build-review}: reads the document once, writes the answer once. Its figure
 * is the balance, where every part of the aircraft shows; the others are picked, and its sheet has
 * them all.
 */
public final class BuildReviewEndpoint
        implements Calculation<ApiBuildReviewRequest, Aircraft, Review, ApiBuildReviewAnswer> {

    @Override
    public String name() {
        return "build-review";
    }

    @Override
    public Class<ApiBuildReviewRequest> requestType() {
        return ApiBuildReviewRequest.class;
    }

    @Override
    public Aircraft read(ApiBuildReviewRequest request, Reading reading) {
        return new ReviewReading(request, reading).aircraft();
    }

    @Override
    public Review work(Aircraft aircraft) {
        return BuildReview.of(aircraft);
    }

    @Override
    public ApiBuildReviewAnswer answer(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return new ReviewWriting(done).answer();
    }

    @Override
    public String figure(Done<ApiBuildReviewRequest, Aircraft, Review> done, Theme theme) {
        return BalanceFigure.of(done.work().tasks().balance(), done.work().balance(), theme);
    }

    @Override
    public boolean draws(String pointer) {
        return Parts.mayStandAt(pointer);
    }

    @Override
    public Optional<String> figure(Done<ApiBuildReviewRequest, Aircraft, Review> done, String pointer, Theme theme) {
        return Parts.at(pointer, parts(done)).map(part -> part.figure().apply(theme));
    }

    @Override
    public Optional<Function<Done<ApiBuildReviewRequest, Aircraft, Review>, String>> sheet() {
        return Optional.of(done -> ReviewSheet.of(
                        Optional.ofNullable(done.request().name()),
                        answer(done),
                        ReviewFigures.of(done.work(), parts(done)))
                .html());
    }

    @Override
    public List<ApiWorking> workings(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return WorkingWriting.write(Parts.workings(parts(done)));
    }

    private static List<Part> parts(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return Parts.of(done.work(), new ReviewPlaces(done.read()));
    }
}
