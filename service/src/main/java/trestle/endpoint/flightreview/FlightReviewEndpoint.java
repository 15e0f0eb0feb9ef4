package trestle.endpoint.flightreview;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trestle.api.model.ApiFlightReviewAnswer;
import trestle.api.model.ApiFlightReviewRequest;
import trestle.api.model.ApiFlightSummary;
import trestle.api.model.ApiPack;
import trestle.api.model.ApiTelemetry;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Certainty;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.common.PackEstimates;
import trestle.figure.FlightReviewFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.telemetry.Channel;
import trestle.telemetry.FlightReview;
import trestle.telemetry.ReviewPart;
import trestle.telemetry.ReviewTask;
import trestle.telemetry.ReviewWorkings;

/** The door of {@code /v1/flight-review}: reads the request once, writes the answer once. */
public final class FlightReviewEndpoint
        implements Calculation<ApiFlightReviewRequest, ReviewTask, FlightReview, ApiFlightReviewAnswer> {
    private static final List<String> MODELS = List.of(
            "trapezium rule without gaps; geodesics on WGS 84 (GeographicLib)",
            "wind as the centre of ground velocities (Kåsa 1976, refined by least squares; from memory)",
            "power of level flight by Huber's regression (Robust Statistics; from memory), or through one mean power with"
                    + " the usual induced part of the wing (common practice)",
            "rest voltage of cells by published parameter sets");

    private static final List<String> CAUTIONS = List.of(
            "One flight in one wind is no proof: fly the same again before you plan on its numbers, and keep the reserve.",
            "A voltage over the cells in series is a mean: measure each cell of a pack that went low before it is"
                    + " charged.");

    private static final String TELEMETRY = ApiFlightReviewRequest.TELEMETRY.at("");
    private static final String SUMMARY = ApiFlightReviewRequest.SUMMARY.at("");

    @Override
    public String name() {
        return "flight-review";
    }

    @Override
    public Class<ApiFlightReviewRequest> requestType() {
        return ApiFlightReviewRequest.class;
    }

    @Override
    public ApiFlightReviewRequest complete(ApiFlightReviewRequest request, Estimating estimating) {
        if (request.telemetry() == null && request.summary() == null) {
            estimating.missing(TELEMETRY, "one of telemetry and summary");
        }
        ApiPack pack = request.pack();
        return pack == null
                ? request
                : request.toBuilder()
                        .pack(new PackEstimates(estimating, PackEstimates.startC(pack))
                                .pack(pack, ApiFlightReviewRequest.PACK.at("")))
                        .build();
    }

    /** None of a review's figures has a band, so nothing is drawn again. */
    @Override
    public Done<ApiFlightReviewRequest, ReviewTask, FlightReview> done(
            ApiFlightReviewRequest request, Certainty certainty) {
        return Calculation.super.done(request, certainty.estimates() ? Certainty.ESTIMATED : Certainty.GIVEN_ONLY);
    }

    @Override
    public ReviewTask read(ApiFlightReviewRequest request, Reading reading) {
        return new FlightReviewReading(request, reading).task();
    }

    @Override
    public FlightReview work(ReviewTask read) {
        return FlightReview.of(read);
    }

    @Override
    public ApiFlightReviewAnswer answer(Done<ApiFlightReviewRequest, ReviewTask, FlightReview> done) {
        return FlightReviewWriting.write(
                done.read(),
                done.work(),
                JudgementWriting.of(
                        done.work().judgement(), FlightReviewEndpoint::place, done.assumed(), CAUTIONS, MODELS));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiFlightReviewRequest, ReviewTask, FlightReview> done) {
        return WorkingWriting.write(ReviewWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiFlightReviewRequest, ReviewTask, FlightReview> done, Theme theme) {
        return FlightReviewFigure.of(done.read(), done.work(), theme);
    }

    private static String place(Subject subject) {
        if (subject.part() == ReviewPart.COLUMN) {
            Channel channel = Channel.values()[subject.indices().get(0)];
            return TELEMETRY + "/" + TelemetryReading.FIELDS.get(channel);
        }
        Map<Enum<?>, String> places = new HashMap<>(new EnumMap<>(Map.of(
                ReviewPart.FLIGHT, "",
                ReviewPart.LOG, TELEMETRY,
                ReviewPart.TIME, ApiTelemetry.TIME_S.at(TELEMETRY),
                ReviewPart.SUMMARY, SUMMARY,
                ReviewPart.CHARGE, ApiFlightSummary.CHARGE_USED_AH.at(SUMMARY),
                ReviewPart.REST_VOLTAGE, ApiFlightSummary.REST_VOLTAGE_V.at(SUMMARY),
                ReviewPart.LOWEST_VOLTAGE, ApiFlightSummary.LOWEST_VOLTAGE_V.at(SUMMARY),
                ReviewPart.AIRCRAFT, ApiFlightReviewRequest.AIRCRAFT.at(""),
                ReviewPart.PACK, ApiFlightReviewRequest.PACK.at(""))));
        return new Pointers(places).to(subject);
    }
}
