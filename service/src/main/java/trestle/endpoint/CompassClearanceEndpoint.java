package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiCompassClearanceAnswer;
import trestle.api.model.ApiCompassClearanceRequest;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiWorking;
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
final class CompassClearanceEndpoint
        implements Calculation<ApiCompassClearanceRequest, ApiCompassClearanceAnswer>,
                Drawn<ApiCompassClearanceRequest>,
                Worked<ApiCompassClearanceRequest> {
    private static final List<String> MODELS = List.of(
            "straight conductors by the law of Biot and Savart, out and return (Griffiths,"
                    + " Introduction to Electrodynamics, section 5.2)",
            "heading error: arc tangent of the field over the horizontal field of the" + " earth");

    private static final List<String> CAUTIONS =
            List.of("Calibrate the compass in the finished aircraft, away from iron, and watch the heading while the"
                    + " motor runs up: tied down, propeller clear of everyone.");

    @Override
    public String name() {
        return "compass-clearance";
    }

    @Override
    public Class<ApiCompassClearanceRequest> requestType() {
        return ApiCompassClearanceRequest.class;
    }

    @Override
    public ApiCompassClearanceAnswer answer(ApiCompassClearanceRequest request) {
        Reading reading = new Reading();
        CompassTask task = read(request, reading);
        Clearance clearance = CompassClearance.of(task);
        return CompassWriting.write(task.runs(), clearance, judgement(clearance, pointers("")::to, reading));
    }

    @Override
    public List<ApiWorking> workings(ApiCompassClearanceRequest request) {
        CompassTask task = read(request, new Reading());
        return WorkingWriting.write(CompassWorkings.of(task, CompassClearance.of(task)));
    }

    @Override
    public String figure(ApiCompassClearanceRequest request, Theme theme) {
        CompassTask task = read(request, new Reading());
        return CompassFigure.of(task, CompassClearance.of(task), theme);
    }

    static ApiJudgement judgement(Clearance clearance, Function<Subject, String> place, Reading reading) {
        return Judge.of(clearance.findings(), clearance.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    private static CompassTask read(ApiCompassClearanceRequest request, Reading reading) {
        Optional<List<LeadRun>> runs = CompassReading.runs(request.runs(), "/runs", reading);
        reading.refuseContradictions();
        return CompassReading.task(
                runs.orElseThrow(), request.earthField(), request.allowedHeadingErrorDeg(), "", reading);
    }

    /** Where the parts of a clearance stand below a place in a request. */
    static Pointers pointers(String at) {
        return new Pointers(Map.ofEntries(
                entry(CompassPart.RUNS, at + "/runs"),
                entry(CompassPart.DISTANCE, at + "/runs/{}/distance_mm"),
                entry(CompassPart.TWISTED, at + "/runs/{}/twisted"),
                entry(CompassPart.EARTH_FIELD, at + "/earth_field/horizontal_ut"),
                entry(CompassPart.ALLOWED_ERROR, at + "/allowed_heading_error_deg")));
    }
}
