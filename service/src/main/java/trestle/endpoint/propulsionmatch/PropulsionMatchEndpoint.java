package trestle.endpoint.propulsionmatch;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiPropulsionMatchAnswer;
import trestle.api.model.ApiPropulsionMatchRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.Estimating;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.MainFigure;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.PropulsionFigure;
import trestle.figure.Theme;
import trestle.finding.Judgement;
import trestle.finding.Subject;
import trestle.propulsion.PropulsionMatch;
import trestle.propulsion.PropulsionTask;
import trestle.propulsion.PropulsionWorkings;

/** The door of {@code /v1/propulsion-match}: reads the request once, writes the answer once. */
public final class PropulsionMatchEndpoint
        implements Calculation<ApiPropulsionMatchRequest, PropulsionTask, PropulsionMatch, ApiPropulsionMatchAnswer> {
    public static final List<String> MODELS = List.of(
            "propeller by blade elements in their own induced flow, fitted to one half of"
                    + " the UIUC Propeller Data Site (Brandt, Deters, Ananda, Dantsker, Selig)"
                    + " and checked against the other, or by its own measurements",
            "motor of three constants (Drela, First-Order DC Electric Motor Model, 2007, quoted second hand);"
                    + " controller as an averaging stage with losses of its own",
            "momentum theory (Rankine, Froude; from memory) as the limit of any propeller");

    private static final List<String> CAUTIONS = List.of(
            "A propeller maims: take it off while you set up; for a bench run restrain the motor, wear eye protection,"
                    + " keep everyone out of the propeller's plane and from in front of it, and arm last.",
            "Inspect the propeller before every run: one with a nick, a crack or a loose hub can come apart.",
            "Run full throttle in short bursts at first and read current and temperature; fuse or limit what can be"
                    + " shorted. The makers' ratings come before these numbers.");

    @Override
    public String name() {
        return "propulsion-match";
    }

    @Override
    public Class<ApiPropulsionMatchRequest> requestType() {
        return ApiPropulsionMatchRequest.class;
    }

    @Override
    public ApiPropulsionMatchRequest complete(ApiPropulsionMatchRequest request, Estimating estimating) {
        return PropulsionCompletion.complete(request, estimating);
    }

    @Override
    public void figures(PropulsionMatch work, Map<MainFigure, Double> figures) {
        PropulsionWriting.figures(work, figures);
    }

    @Override
    public Set<String> stops(PropulsionMatch work) {
        return work.judgement().stops();
    }

    @Override
    public PropulsionTask read(ApiPropulsionMatchRequest request, Reading reading) {
        return new PropulsionReading(request, reading).task();
    }

    @Override
    public PropulsionMatch work(PropulsionTask read) {
        return PropulsionMatch.of(read);
    }

    @Override
    public ApiPropulsionMatchAnswer answer(Done<ApiPropulsionMatchRequest, PropulsionTask, PropulsionMatch> done) {
        return PropulsionWriting.write(
                done.read(),
                done.work(),
                judgement(done.work().judgement(), PropulsionReading.pointers(done.request())::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiPropulsionMatchRequest, PropulsionTask, PropulsionMatch> done) {
        return WorkingWriting.write(PropulsionWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiPropulsionMatchRequest, PropulsionTask, PropulsionMatch> done, Theme theme) {
        return PropulsionFigure.of(done.read(), done.work(), theme);
    }

    public static ApiJudgement judgement(Judgement judgement, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(judgement, place, assumed, CAUTIONS, MODELS);
    }
}
