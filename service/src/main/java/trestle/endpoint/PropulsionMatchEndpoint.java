package trestle.endpoint;

import java.util.List;
import java.util.function.Function;
import trestle.api.model.Judgement;
import trestle.api.model.PropulsionMatchAnswer;
import trestle.api.model.PropulsionMatchRequest;
import trestle.api.model.Working;
import trestle.figure.PropulsionFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.PropulsionWorkings;

/** The door of {@code /v1/propulsion-match}: reads the request once, writes the answer once. */
final class PropulsionMatchEndpoint
        implements Calculation<PropulsionMatchRequest, PropulsionMatchAnswer>,
                Drawn<PropulsionMatchRequest>,
                Worked<PropulsionMatchRequest> {
    static final List<String> MODELS = List.of(
            "propeller by blade elements in their own induced flow, fitted to one half of"
                    + " the UIUC Propeller Data Site (Brandt, Deters, Ananda, Dantsker, Selig)"
                    + " and checked against the other, or by its own measurements",
            "motor of three constants (Drela, First-Order DC Electric Motor Model, 2007, quoted second hand);"
                    + " controller as an averaging stage with losses of its own",
            "momentum theory (Rankine, Froude; from memory) as the limit of any propeller");

    private static final List<String> CAUTIONS = List.of(
            "A propeller maims: take it off while you set up, bolt the motor down for bench runs, keep everyone out of"
                    + " its plane and from in front of it, and arm last.",
            "High current: fuse or limit what can be shorted, and read current and temperature in the first"
                    + " full-throttle runs, in short bursts; the makers' ratings come first.");

    @Override
    public String name() {
        return "propulsion-match";
    }

    @Override
    public Class<PropulsionMatchRequest> requestType() {
        return PropulsionMatchRequest.class;
    }

    @Override
    public PropulsionMatchAnswer answer(PropulsionMatchRequest request) {
        Reading reading = new Reading();
        PropulsionReading read = new PropulsionReading(request, reading);
        PropulsionTask task = read.task();
        PropulsionMatch match = PropulsionMatch.of(task);
        return PropulsionWriting.write(task, match, judgement(match, read.pointers()::to, reading));
    }

    @Override
    public List<Working> workings(PropulsionMatchRequest request) {
        PropulsionTask task = new PropulsionReading(request, new Reading()).task();
        return WorkingWriting.write(PropulsionWorkings.of(task, PropulsionMatch.of(task)));
    }

    @Override
    public String figure(PropulsionMatchRequest request, Theme theme) {
        PropulsionTask task = new PropulsionReading(request, new Reading()).task();
        return PropulsionFigure.of(task, PropulsionMatch.of(task), theme);
    }

    static Judgement judgement(PropulsionMatch match, Function<Subject, String> place, Reading reading) {
        return Judge.of(match.findings(), match.assumptions(), place, reading, CAUTIONS, MODELS);
    }
}
