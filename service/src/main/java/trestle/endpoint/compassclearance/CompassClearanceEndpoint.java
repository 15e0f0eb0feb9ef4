package trestle.endpoint.compassclearance;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiCompassClearanceRequest;
import trestle.api.model.ApiCompassRun;
import trestle.api.model.ApiEarthField;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.CompassFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.magnetics.Clearance;
import trestle.magnetics.CompassClearance;
import trestle.magnetics.CompassPart;
import trestle.magnetics.CompassTask;
import trestle.magnetics.CompassWorkings;
import trestle.magnetics.LeadRun;

/** The door of {@code /v1/compass-clearance}: reads the request once, writes the answer once. */
public final class CompassClearanceEndpoint
        implements Calculation<ApiCompassClearanceRequest, CompassTask, Clearance, ApiCompassClearanceAnswer> {
    private static final List<String> MODELS = List.of(
            "straight conductors by the law of Biot and Savart, out and return (Griffiths,"
                    + " Introduction to Electrodynamics, section 5.2; from memory)",
            "heading error: arc sine of the field over the horizontal field of the earth, which is its worst side");

    private static final List<String> CAUTIONS = List.of(
            "Calibrate the compass in the finished aircraft, away from iron, and watch the heading while the motor runs"
                    + " up: tied down, propeller clear of everyone.",
            "Fly the first check by hand, in view, and compare heading with track before any mode that steers by the"
                    + " compass.");

    @Override
    public String name() {
        return "compass-clearance";
    }

    @Override
    public Class<ApiCompassClearanceRequest> requestType() {
        return ApiCompassClearanceRequest.class;
    }

    @Override
    public CompassTask read(ApiCompassClearanceRequest request, Reading reading) {
        Optional<List<LeadRun>> runs =
                CompassReading.runs(request.runs(), ApiCompassClearanceRequest.RUNS.at(""), reading);
        reading.refuseContradictions();
        return CompassReading.task(
                runs.orElseThrow(), request.earthField(), request.allowedHeadingErrorDeg(), "", reading);
    }

    @Override
    public Clearance work(CompassTask read) {
        return CompassClearance.of(read);
    }

    @Override
    public ApiCompassClearanceAnswer answer(Done<ApiCompassClearanceRequest, CompassTask, Clearance> done) {
        return CompassWriting.write(
                done.read().runs(), done.work(), judgement(done.work(), pointers("")::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiCompassClearanceRequest, CompassTask, Clearance> done) {
        return WorkingWriting.write(CompassWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiCompassClearanceRequest, CompassTask, Clearance> done, Theme theme) {
        return CompassFigure.of(done.read(), done.work(), theme);
    }

    public static ApiJudgement judgement(Clearance clearance, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(clearance.judgement(), place, assumed, CAUTIONS, MODELS);
    }

    /** Where the parts of a clearance stand below a place in a request. */
    public static Pointers pointers(String at) {
        String runs = ApiCompassClearanceRequest.RUNS.at(at);
        return new Pointers(Map.ofEntries(
                entry(CompassPart.RUNS, runs),
                entry(CompassPart.DISTANCE, ApiCompassRun.DISTANCE_MM.at(runs + "/{}")),
                entry(CompassPart.PEAK_CURRENT, ApiCompassRun.PEAK_CURRENT_A.at(runs + "/{}")),
                entry(CompassPart.TWISTED, ApiCompassRun.TWISTED.at(runs + "/{}")),
                entry(
                        CompassPart.EARTH_FIELD,
                        ApiEarthField.HORIZONTAL_UT.at(ApiCompassClearanceRequest.EARTH_FIELD.at(at))),
                entry(CompassPart.ALLOWED_ERROR, ApiCompassClearanceRequest.ALLOWED_HEADING_ERROR_DEG.at(at))));
    }
}
