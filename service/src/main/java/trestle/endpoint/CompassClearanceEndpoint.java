package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.CompassClearanceAnswer;
import trestle.api.model.CompassClearanceRequest;
import trestle.api.model.Judgement;
import trestle.api.model.Working;
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
        implements Calculation<CompassClearanceRequest, CompassClearanceAnswer>,
                Drawn<CompassClearanceRequest>,
                Worked<CompassClearanceRequest> {
    private static final List<String> MODELS = List.of(
            "straight conductors by the law of Biot and Savart, out and return (Griffiths,"
                    + " Introduction to Electrodynamics, section 5.2; from memory)",
            "heading error: arc tangent of the field over the horizontal field of the" + " earth");

    private static final List<String> CAUTIONS =
            List.of("Calibrate the compass in the finished aircraft, away from iron, and watch the heading while the"
                    + " motor runs up: tied down, propeller clear of everyone.");

    @Override
    public String name() {
        return "compass-clearance";
    }

    @Override
    public Class<CompassClearanceRequest> requestType() {
        return CompassClearanceRequest.class;
    }

    @Override
    public CompassClearanceAnswer answer(CompassClearanceRequest request) {
        Reading reading = new Reading();
        CompassTask task = read(request, reading);
        Clearance clearance = CompassClearance.of(task);
        return CompassWriting.write(task.runs(), clearance, judgement(clearance, pointers("")::to, reading));
    }

    @Override
    public List<Working> workings(CompassClearanceRequest request) {
        CompassTask task = read(request, new Reading());
        return WorkingWriting.write(CompassWorkings.of(task, CompassClearance.of(task)));
    }

    @Override
    public String figure(CompassClearanceRequest request, Theme theme) {
        CompassTask task = read(request, new Reading());
        return CompassFigure.of(task, CompassClearance.of(task), theme);
    }

    static Judgement judgement(Clearance clearance, Function<Subject, String> place, Reading reading) {
        return Judge.of(clearance.findings(), clearance.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    private static CompassTask read(CompassClearanceRequest request, Reading reading) {
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
