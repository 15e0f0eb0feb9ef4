package trestle.endpoint.buildreview;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trestle.api.model.ApiBuildReviewRequest;
import trestle.api.model.ApiFault;
import trestle.api.model.ApiInstalledRun;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.ImpossibleRequest;
import trestle.endpoint.MainFigure;
import trestle.endpoint.PartName;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.Theme;
import trestle.review.Aircraft;
import trestle.review.Review;

/**
 * One calculation of an aircraft, asked of the aircraft's document and answered as that calculation answers: one file
 * asks everything. Only what it needs is worked out.
 *
 * @param whole the review
 * @param asked the calculation, and which of several
 */
record PartOfReview(BuildReviewEndpoint whole, PartName asked)
        implements Calculation<ApiBuildReviewRequest, Aircraft, Review, Object> {
    private static final String SEVERAL = "wire-sizing";

    /** Where in the document a part is described that an aircraft may lack. */
    private static final Map<String, String> DESCRIBED_AT = Map.of(
            "mass-balance", "/items",
            "propulsion-match", "/propulsion/motor",
            "rail-budget", "/rails",
            "launch-and-climb", "/flight/launch",
            "compass-clearance", "/compass",
            "pack-charge", "/charging",
            "survey-coverage", "/survey");

    @Override
    public String name() {
        return whole.name();
    }

    @Override
    public Class<ApiBuildReviewRequest> requestType() {
        return whole.requestType();
    }

    @Override
    public Class<?> answerType() {
        return Parts.ANSWERS.get(asked.calculation());
    }

    @Override
    public ApiBuildReviewRequest complete(ApiBuildReviewRequest request, Estimating estimating) {
        return whole.complete(request, estimating);
    }

    @Override
    public Aircraft read(ApiBuildReviewRequest request, Reading reading) {
        Aircraft aircraft = whole.read(request, reading);
        run(request);
        return aircraft;
    }

    /** Index of the run asked for; of the only one where none is named. */
    private int run(ApiBuildReviewRequest request) {
        if (!asked.calculation().equals(SEVERAL)) {
            return 0;
        }
        List<String> names = Reading.listed(request.wiring()).stream()
                .map(ApiInstalledRun::name)
                .toList();
        if (names.isEmpty()) {
            throw fault("/wiring", "the document has no run of wire to size");
        }
        int index = asked.run().isEmpty() && names.size() == 1
                ? 0
                : asked.run().map(names::indexOf).orElse(-1);
        if (index < 0) {
            throw fault(
                    "/wiring",
                    names.stream().collect(Collectors.joining(", ", "say which run of wire with run=: one of ", "")));
        }
        return index;
    }

    private static ImpossibleRequest fault(String at, String message) {
        return new ImpossibleRequest(List.of(new ApiFault(at, "no_such_part", message)));
    }

    @Override
    public Review work(Aircraft read) {
        return whole.work(read);
    }

    @Override
    public Review workAgain(Aircraft read, Review middle) {
        return whole.workAgain(read, middle);
    }

    private Part<?> part(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return Parts.named(asked.calculation(), run(done.request()), done.work())
                .orElseThrow(() -> fault(
                        DESCRIBED_AT.getOrDefault(asked.calculation(), ""),
                        "the document does not describe what " + asked.calculation() + " needs"));
    }

    @Override
    public Object answer(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return answer(part(done), done);
    }

    private static <A> A answer(Part<A> part, Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return part.answer().apply(part.judgement().apply(done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiBuildReviewRequest, Aircraft, Review> done) {
        return WorkingWriting.write(part(done).workings().get());
    }

    @Override
    public String figure(Done<ApiBuildReviewRequest, Aircraft, Review> done, Theme theme) {
        return part(done).figure().apply(theme);
    }

    @Override
    public void figures(Review work, Map<MainFigure, Double> figures) {
        each(work).forEach(part -> part.figures().accept(figures));
    }

    @Override
    public Set<String> stops(Review work) {
        return each(work).flatMap(part -> part.judged().get().stops().stream()).collect(Collectors.toSet());
    }

    /** Without the document, by the name of the run alone. */
    private Stream<? extends Part<?>> each(Review work) {
        int run = IntStream.range(0, work.runs().size())
                .filter(i -> asked.run().isEmpty()
                        || asked.run()
                                .get()
                                .equals(work.runs().get(i).task().run().name()))
                .findFirst()
                .orElse(0);
        return Parts.named(asked.calculation(), run, work).stream();
    }
}
