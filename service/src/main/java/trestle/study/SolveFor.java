package trestle.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiSolveForAnswer;
import trestle.api.model.ApiSolveForRequest;
import trestle.api.model.ApiSolveObjective;
import trestle.api.model.ApiStudyPoint;
import trestle.api.model.ApiStudyScale;
import trestle.api.model.ApiVaried;
import trestle.api.model.ApiWorking;
import trestle.binding.FieldPath;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.endpoint.Writing;
import trestle.figure.StudyFigure;
import trestle.figure.Theme;
import trestle.finding.Chain;

/** The door of {@code /v1/solve-for}. */
public final class SolveFor
        implements Calculation<ApiSolveForRequest, SolveForTask, SolveForResult, ApiSolveForAnswer> {
    private static final String TARGET = ApiSolveForRequest.TARGET.at("");
    private static final String VARY = ApiSolveForRequest.VARY.at("");
    private static final List<String> MODELS =
            List.of("even steps between the ends, then Brent's methods (R. Brent, Algorithms for Minimization without"
                    + " Derivatives, 1973; by a library)");

    private final Setup setup;

    /**
     * A search over the calculations of a catalogue.
     *
     * @param lookup finds a calculation by its name
     */
    public SolveFor(Function<String, Calculation<?, ?, ?, ?>> lookup) {
        this.setup = new Setup(lookup);
    }

    @Override
    public String name() {
        return "solve-for";
    }

    @Override
    public Class<ApiSolveForRequest> requestType() {
        return ApiSolveForRequest.class;
    }

    @Override
    public SolveForTask read(ApiSolveForRequest request, Reading reading) {
        ApiVaried vary = request.vary();
        ApiSolveObjective objective = Reading.or(request.objective(), ApiSolveForRequest.OBJECTIVE);
        if (objective == ApiSolveObjective.EQUAL) {
            reading.needs(
                    "a target to be met", TARGET, "value", request.target().value());
        } else {
            reading.takesNo(
                    "a target that is " + objective,
                    TARGET,
                    "value",
                    request.target().value());
        }
        if (!(vary.from() < vary.to())) {
            reading.fault(ApiVaried.TO.at(VARY), "contradiction", "to must be above from");
        }
        boolean logarithmic = Reading.or(vary.scale(), ApiVaried.SCALE) == ApiStudyScale.LOG;
        if (logarithmic && vary.from() <= 0) {
            reading.fault(ApiVaried.FROM.at(VARY), "contradiction", "even ratios begin above 0");
        }
        reading.refuseContradictions();
        String pick = request.target().pick();
        Studied<?, ?, ?> studied = setup.of(
                request.calculation(),
                request.base(),
                request.reviewPart(),
                request.reviewRun(),
                List.of(new Setup.Wanted(pick, TARGET + "/pick")));
        return new SolveForTask(
                studied,
                Setup.place(studied, vary.at(), ApiVaried.AT.at(VARY)),
                vary.from(),
                vary.to(),
                logarithmic,
                FieldPath.ofPointer(pick),
                Reading.or(request.target().value(), Double.NaN),
                objective);
    }

    @Override
    public SolveForResult work(SolveForTask read) {
        return Search.of(read);
    }

    @Override
    public ApiSolveForAnswer answer(Done<ApiSolveForRequest, SolveForTask, SolveForResult> done) {
        SolveForResult result = done.work();
        return ApiSolveForAnswer.builder()
                .judgement(judgement(done))
                .value(Writing.boxed(result.value()))
                .picked(Writing.boxed(result.picked()))
                .crossings(result.crossings())
                .runs(result.runs())
                .curve(result.curve().stream()
                        .map(point -> new ApiStudyPoint(point.at(), Writing.boxed(point.value())))
                        .toList())
                .build();
    }

    private static ApiJudgement judgement(Done<ApiSolveForRequest, SolveForTask, SolveForResult> done) {
        Pointers pointers = new Pointers(Map.of(StudyPart.TARGET, TARGET, StudyPart.VARIED, VARY));
        return JudgementWriting.of(done.work().judgement(), pointers::to, done.assumed(), StudyWords.CAUTIONS, MODELS);
    }

    @Override
    public List<ApiWorking> workings(Done<ApiSolveForRequest, SolveForTask, SolveForResult> done) {
        Chain chain = new Chain();
        SolveForTask task = done.read();
        chain.given("a", "one end of " + task.at().dotted(), task.from(), StudyWords.unit(task.at()));
        chain.given("b", "the other end", task.to(), StudyWords.unit(task.at()));
        done.work()
                .value()
                .ifPresent(x -> chain.found(
                        "x",
                        "what " + task.at().dotted() + " has to be",
                        x,
                        StudyWords.unit(task.at()),
                        "by search between a and b, each step one run of "
                                + task.studied().calculation().name(),
                        MODELS.get(0)));
        done.work()
                .picked()
                .ifPresent(y -> chain.found(
                        "y",
                        task.pick().dotted() + " there",
                        y,
                        StudyWords.unit(task.pick()),
                        "that calculation at x",
                        Chain.ARITHMETIC));
        return WorkingWriting.write(chain.lines());
    }

    @Override
    public String figure(Done<ApiSolveForRequest, SolveForTask, SolveForResult> done, Theme theme) {
        SolveForTask task = done.read();
        SolveForResult result = done.work();
        List<double[]> points = result.curve().stream()
                .filter(point -> point.value().isPresent())
                .map(point -> new double[] {point.at(), point.value().getAsDouble()})
                .toList();
        Map<Double, String> marks = new LinkedHashMap<>();
        result.crossings().stream().limit(4).forEach(x -> marks.put(x, StudyWords.number(x)));
        String sought = StudyWords.named(task.pick());
        return StudyFigure.curves(
                "Solved for " + StudyWords.named(task.at()),
                summary(task, result),
                result.judgement().findings(),
                StudyWords.titled(task.at()),
                task.logarithmic(),
                List.of(new StudyFigure.Curves(
                        StudyWords.titled(task.pick()),
                        points.isEmpty() ? List.of() : List.of(new StudyFigure.Line(sought, points)))),
                marks,
                theme);
    }

    private static String summary(SolveForTask task, SolveForResult result) {
        if (result.value().isEmpty() || result.picked().isEmpty()) {
            return "No value between the ends does it.";
        }
        return StudyWords.measured(task.at(), result.value().getAsDouble()) + " makes "
                + StudyWords.named(task.pick())
                + " "
                + StudyWords.measured(task.pick(), result.picked().getAsDouble()) + ".";
    }
}
