package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import trestle.api.model.ApiBuildReviewAnswer;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.MainFigure;
import trestle.endpoint.PartName;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.BalanceFigure;
import trestle.figure.EnduranceFigure;
import trestle.figure.Theme;
import trestle.review.Aircraft;
import trestle.review.BuildReview;
import trestle.review.Review;

/**
 * The door of {@code /v1/build-review}: reads the document once, writes the answer once. Its figure
 * is the balance, where every part of the aircraft shows, or without one the endurance; the others are picked, and its sheet has
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
    public List<String> parts() {
        return List.copyOf(Parts.ANSWERS.keySet());
    }

    @Override
    public Calculation<ApiBuildReviewRequest, ?, ?, ?> part(PartName part) {
        return new PartOfReview(this, part);
    }

    @Override
    public ApiBuildReviewRequest complete(ApiBuildReviewRequest request, Estimating estimating) {
        return new ReviewCompletion(request, estimating).complete();
    }

    @Override
    public void figures(Review work, Map<MainFigure, Double> figures) {
        ReviewMainFigures.of(work, figures);
    }

    @Override
    public Set<String> stops(Review work) {
        return ReviewMainFigures.stops(work);
    }

    @Override
    public Review workAgain(Aircraft read, Review middle) {
        return BuildReview.of(read, middle);
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
        Review review = done.work();
        return review.balance()
                .map(balance -> BalanceFigure.of(review.balanceTask().orElseThrow(), balance, theme))
                .orElseGet(() -> EnduranceFigure.of(review.enduranceTask(), review.endurance(), theme));
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
    public Optional<BiFunction<Done<ApiBuildReviewRequest, Aircraft, Review>, String, String>> sheet() {
        return Optional.of((done, asked) -> ReviewSheet.of(
                        Optional.ofNullable(done.request().name()),
                        answer(done),
                        ReviewFigures.of(done.work(), parts(done)),
                        asked)
                .html());
    }

    @Override
    public List<ApiWorking> workings(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return WorkingWriting.write(
                Stream.concat(Parts.workings(parts(done)).stream(), ReviewMargins.workings(done.work()))
                        .toList());
    }

    private static List<Part<?>> parts(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return Parts.of(done.work());
    }
}
