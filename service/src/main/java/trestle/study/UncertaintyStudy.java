package trestle.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import trestle.api.model.ApiInfluence;
import trestle.api.model.ApiPercentile;
import trestle.api.model.ApiRisk;
import trestle.api.model.ApiSpreadFigure;
import trestle.api.model.ApiUncertaintyAnswer;
import trestle.api.model.ApiUncertaintyRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.StudyFigure;
import trestle.figure.Theme;
import trestle.finding.Chain;
import trestle.units.Share;

/** The door of {@code /v1/uncertainty}. */
public final class UncertaintyStudy
        implements Calculation<ApiUncertaintyRequest, UncertaintyTask, UncertaintyResult, ApiUncertaintyAnswer> {
    private static final String UNCERTAIN = ApiUncertaintyRequest.UNCERTAIN.at("");
    private static final List<Double> USUAL_PERCENTILES = List.of(10.0, 50.0, 90.0);
    private static final int BINS = 24;
    private static final List<String> MODELS = List.of(
            "Latin hypercube (McKay, Beckman, Conover, Technometrics 21, 1979)",
            "shares of the variance from a fitted sum of curves (first-order indices of Sobol)");

    private final Setup setup;

    /**
     * A study over the calculations of a catalogue.
     *
     * @param lookup finds a calculation by its name
     */
    public UncertaintyStudy(Function<String, Calculation<?, ?, ?, ?>> lookup) {
        this.setup = new Setup(lookup);
    }

    @Override
    public String name() {
        return "uncertainty";
    }

    @Override
    public Class<ApiUncertaintyRequest> requestType() {
        return ApiUncertaintyRequest.class;
    }

    @Override
    public UncertaintyTask read(ApiUncertaintyRequest request, Reading reading) {
        var given = Reading.listed(request.uncertain());
        for (int i = 0; i < given.size(); i++) {
            Uncertain.check(given.get(i), UNCERTAIN + "/" + i, reading);
        }
        reading.refuseContradictions();
        Studied<?, ?, ?> studied = setup.of(
                request.calculation(),
                request.base(),
                request.reviewPart(),
                request.reviewRun(),
                Setup.Wanted.of(request.pick(), ApiUncertaintyRequest.PICK.at("")));
        int samples = Reading.or(request.samples(), ApiUncertaintyRequest.SAMPLES);
        Price.check(studied, samples, ApiUncertaintyRequest.SAMPLES.at(""));
        List<Uncertain> uncertain = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            String at = UNCERTAIN + "/" + i + "/at";
            uncertain.add(new Uncertain(Setup.place(studied, given.get(i).at(), at), given.get(i)));
        }
        return new UncertaintyTask(
                studied,
                uncertain,
                Reading.or(request.ownEstimates(), ApiUncertaintyRequest.OWN_ESTIMATES)
                        ? own(studied, uncertain)
                        : List.of(),
                samples,
                Reading.or(request.seed(), ApiUncertaintyRequest.SEED),
                Reading.or(request.percentiles(), USUAL_PERCENTILES));
    }

    /** What is given a distribution is drawn from that, and not estimated. */
    private static List<String> own(Studied<?, ?, ?> studied, List<Uncertain> uncertain) {
        List<String> given = uncertain.stream().map(u -> u.path().pointer()).toList();
        return studied.unknowns().stream().filter(name -> !given.contains(name)).toList();
    }

    @Override
    public UncertaintyResult work(UncertaintyTask read) {
        return UncertaintyResult.of(read);
    }

    @Override
    public ApiUncertaintyAnswer answer(Done<ApiUncertaintyRequest, UncertaintyTask, UncertaintyResult> done) {
        Pointers pointers = new Pointers(
                Map.of(StudyPart.UNCERTAIN, UNCERTAIN, StudyPart.PICKS, ApiUncertaintyRequest.PICK.at("")));
        return ApiUncertaintyAnswer.builder()
                .judgement(JudgementWriting.of(
                        done.work().judgement(), pointers::to, done.assumed(), StudyWords.CAUTIONS, MODELS))
                .samples(done.read().samples())
                .failed(done.work().failed())
                .figures(done.work().figures().stream()
                        .map(figure -> figure(figure, done.read().percentiles()))
                        .toList())
                .stops(done.work().stops().entrySet().stream()
                        .map(stop ->
                                new ApiRisk(stop.getKey(), Share.percentFromFraction(Math.min(1, stop.getValue()))))
                        .toList())
                .build();
    }

    private static ApiSpreadFigure figure(UncertaintyResult.Figure figure, List<Double> percentiles) {
        ApiSpreadFigure.Builder written =
                ApiSpreadFigure.builder().pick(figure.pick().pointer()).draws(figure.values().length);
        if (figure.values().length < 2) {
            return written.build();
        }
        DescriptiveStatistics statistics = figure.statistics();
        return written.mean(statistics.getMean())
                .standardDeviation(statistics.getStandardDeviation())
                .percentiles(percentiles.stream()
                        .map(percent -> new ApiPercentile(percent, statistics.getPercentile(percent)))
                        .toList())
                .influence(
                        figure.influence().isEmpty()
                                ? null
                                : figure.influence().entrySet().stream()
                                        .map(share -> new ApiInfluence(
                                                share.getKey(), Share.percentFromFraction(share.getValue())))
                                        .toList())
                .build();
    }

    @Override
    public List<ApiWorking> workings(Done<ApiUncertaintyRequest, UncertaintyTask, UncertaintyResult> done) {
        Chain chain = new Chain();
        UncertaintyTask task = done.read();
        chain.given("N", "draws", task.samples(), "1");
        chain.given("u", "numbers with a distribution", task.uncertain().size(), "1");
        chain.given(
                "e",
                "numbers that the calculation estimates by itself",
                task.unknowns().size(),
                "1",
                Chain.ARITHMETIC);
        chain.step(
                "k",
                "columns of the hypercube",
                task.uncertain().size() + task.unknowns().size(),
                "1",
                "u+e",
                MODELS.get(0));
        return WorkingWriting.write(chain.lines());
    }

    @Override
    public String figure(Done<ApiUncertaintyRequest, UncertaintyTask, UncertaintyResult> done, Theme theme) {
        UncertaintyResult.Figure first = done.work().figures().get(0);
        Map<Double, String> marks = new LinkedHashMap<>();
        String summary = "No draw has it.";
        if (first.values().length >= 2) {
            DescriptiveStatistics statistics = first.statistics();
            USUAL_PERCENTILES.forEach(p -> {
                double value = statistics.getPercentile(p);
                marks.put(value, "P" + StudyWords.number(p) + " " + StudyWords.number(value));
            });
            summary = "Mean " + StudyWords.measured(first.pick(), statistics.getMean()) + ", standard deviation "
                    + StudyWords.measured(first.pick(), statistics.getStandardDeviation()) + ", of "
                    + first.values().length + " draws.";
        }
        return StudyFigure.curves(
                "How sure " + StudyWords.named(first.pick()) + " is",
                summary,
                done.work().judgement().findings(),
                StudyWords.titled(first.pick()),
                false,
                List.of(new StudyFigure.Curves(
                        "Share of the draws, %",
                        marks.isEmpty() ? List.of() : List.of(new StudyFigure.Line("draws", histogram(first))))),
                marks,
                theme);
    }

    /** Steps of equal width; a figure that does not move stands in one. */
    private static List<double[]> histogram(UncertaintyResult.Figure figure) {
        DescriptiveStatistics statistics = figure.statistics();
        double least = statistics.getMin();
        double width = Math.max((statistics.getMax() - least) / BINS, Math.max(1e-9, 1e-9 * Math.abs(least)));
        int[] counts = new int[BINS];
        for (double value : figure.values()) {
            counts[Math.min(BINS - 1, (int) ((value - least) / width))]++;
        }
        List<double[]> steps = new ArrayList<>();
        steps.add(new double[] {least, 0});
        for (int i = 0; i < BINS; i++) {
            double share = Share.percentFromFraction((double) counts[i] / figure.values().length);
            steps.add(new double[] {least + i * width, share});
            steps.add(new double[] {least + (i + 1) * width, share});
        }
        steps.add(new double[] {least + BINS * width, 0});
        return steps;
    }
}
