package trestle.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiTradeSlice;
import trestle.api.model.ApiTradeStudyAnswer;
import trestle.api.model.ApiTradeStudyRequest;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Reading;
import trestle.endpoint.Table;
import trestle.endpoint.WorkingWriting;
import trestle.figure.StudyFigure;
import trestle.figure.Theme;
import trestle.finding.Chain;
import trestle.finding.Judge;
import trestle.finding.Judgement;
import trestle.finding.Subject;

/** The door of {@code /v1/trade-study}. */
public final class TradeStudy
        implements Calculation<ApiTradeStudyRequest, TradePlan, TradeStudyResult, ApiTradeStudyAnswer> {
    /** More points than this are a stream of rows, not an answer. */
    static final int MOST_IN_AN_ANSWER = 10_000;

    /** More than this is for several machines: by slices. */
    static final long MOST_IN_A_STREAM = 10_000_000;

    private static final String FACTORS = ApiTradeStudyRequest.FACTORS.at("");
    private static final String SLICE = ApiTradeStudyRequest.SLICE.at("");
    private static final int MOST_LINES = 6;
    private static final int MOST_PANELS = 3;
    private static final List<String> MODELS =
            List.of("full factorial plan: each value of each factor with each of the others");

    private final Setup setup;

    /**
     * A study over the calculations of a catalogue.
     *
     * @param lookup finds a calculation by its name
     */
    public TradeStudy(Function<String, Calculation<?, ?, ?, ?>> lookup) {
        this.setup = new Setup(lookup);
    }

    @Override
    public String name() {
        return "trade-study";
    }

    @Override
    public Class<ApiTradeStudyRequest> requestType() {
        return ApiTradeStudyRequest.class;
    }

    @Override
    public TradePlan read(ApiTradeStudyRequest request, Reading reading) {
        for (int i = 0; i < request.factors().size(); i++) {
            Factor.check(request.factors().get(i), FACTORS + "/" + i, reading);
        }
        ApiTradeSlice slice = request.slice();
        if (slice != null && slice.index() >= slice.of()) {
            reading.fault(
                    ApiTradeSlice.INDEX.at(SLICE),
                    "contradiction",
                    "slices count from 0: the last of " + slice.of() + " is " + (slice.of() - 1));
        }
        reading.refuseContradictions();
        Studied<?, ?, ?> studied = setup.of(
                request.calculation(),
                request.base(),
                request.reviewPart(),
                request.reviewRun(),
                Setup.Wanted.of(request.pick(), ApiTradeStudyRequest.PICK.at("")));
        List<Factor> factors = new ArrayList<>();
        for (int i = 0; i < request.factors().size(); i++) {
            var given = request.factors().get(i);
            factors.add(new Factor(Setup.place(studied, given.at(), FACTORS + "/" + i + "/at"), given));
        }
        return plan(studied, factors, slice);
    }

    private static TradePlan plan(Studied<?, ?, ?> studied, List<Factor> factors, ApiTradeSlice slice) {
        double points = TradePlan.points(factors);
        int of = slice == null ? 1 : slice.of();
        if (points / of > MOST_IN_A_STREAM) {
            throw Setup.fault(
                    FACTORS,
                    "too_many_points",
                    String.format(
                            Locale.ROOT,
                            "these factors make %.0f points, and a request may have %d: share them by slice",
                            points,
                            MOST_IN_A_STREAM));
        }
        long all = (long) points;
        int index = slice == null ? 0 : slice.index();
        return new TradePlan(studied, factors, bound(all, index, of), bound(all, index + 1, of));
    }

    /** Where a slice begins: equal parts, the odd points spread over them. */
    private static long bound(long all, int index, int of) {
        return all / of * index + all % of * index / of;
    }

    @Override
    public TradeStudyResult work(TradePlan plan) {
        if (plan.size() > MOST_IN_AN_ANSWER) {
            throw Setup.fault(
                    FACTORS,
                    "too_many_points",
                    plan.size() + " points are more than one answer holds, " + MOST_IN_AN_ANSWER
                            + ": ask for as=csv, or for JSON lines");
        }
        Price.check(plan.studied(), plan.size(), FACTORS);
        List<Map<String, Object>> rows = new ArrayList<>();
        plan.table().rows().forEachRemaining(rows::add);
        int failed =
                (int) rows.stream().filter(row -> row.containsKey(Table.ERROR)).count();
        return new TradeStudyResult(rows, failed, judgement(rows.size(), failed));
    }

    private static Judgement judgement(int points, int failed) {
        Judge judge = new Judge();
        judge.check(
                "points-answered",
                "the points of the plan",
                Subject.of(StudyPart.FACTORS),
                trial -> trial.attentionIf(
                        failed > 0,
                        "points-refused",
                        "At %d of %d points the calculation refuses its request: their rows say why.",
                        failed,
                        points));
        return judge.judgement();
    }

    @Override
    public boolean tabled() {
        return true;
    }

    @Override
    public Optional<Table> table(TradePlan read) {
        return Optional.of(read.table());
    }

    @Override
    public ApiTradeStudyAnswer answer(Done<ApiTradeStudyRequest, TradePlan, TradeStudyResult> done) {
        Pointers pointers = new Pointers(Map.of(StudyPart.FACTORS, FACTORS));
        return ApiTradeStudyAnswer.builder()
                .judgement(JudgementWriting.of(
                        done.work().judgement(), pointers::to, done.assumed(), StudyWords.CAUTIONS, MODELS))
                .points(done.work().rows().size())
                .failed(done.work().failed())
                .columns(done.read().columns())
                .rows(done.work().rows())
                .build();
    }

    @Override
    public List<ApiWorking> workings(Done<ApiTradeStudyRequest, TradePlan, TradeStudyResult> done) {
        Chain chain = new Chain();
        List<String> symbols = new ArrayList<>();
        List<Factor> factors = done.read().factors();
        for (int i = 0; i < factors.size(); i++) {
            symbols.add("n_" + (i + 1));
            chain.given(
                    "n_" + (i + 1),
                    "values of " + factors.get(i).path().dotted(),
                    factors.get(i).count(),
                    "1");
        }
        chain.step(
                "N",
                "points of the whole plan",
                TradePlan.points(factors),
                "1",
                String.join("*", symbols),
                Chain.ARITHMETIC);
        return WorkingWriting.write(chain.lines());
    }

    @Override
    public String figure(Done<ApiTradeStudyRequest, TradePlan, TradeStudyResult> done, Theme theme) {
        TradePlan plan = done.read();
        List<String> columns = plan.columns();
        int last = plan.factors().size() - 1;
        Factor across = plan.factors().get(last);
        boolean drawn = across.numeric() && last <= 1;
        List<StudyFigure.Curves> curves = new ArrayList<>();
        for (int pick = 0;
                drawn && pick < Math.min(MOST_PANELS, plan.studied().picks().size());
                pick++) {
            curves.add(new StudyFigure.Curves(
                    StudyWords.titled(plan.studied().picks().get(pick)),
                    lines(done.work().rows(), plan, columns.get(last + 1 + pick), columns)));
        }
        return StudyFigure.curves(
                "Trade study",
                done.work().rows().size() + " points, of which " + done.work().failed() + " were refused.",
                done.work().judgement().findings(),
                StudyWords.titled(across.path()),
                false,
                curves.stream().filter(panel -> !panel.lines().isEmpty()).toList(),
                Map.of(),
                theme);
    }

    /** A line for each value of the first of two factors. */
    private static List<StudyFigure.Line> lines(
            List<Map<String, Object>> rows, TradePlan plan, String figure, List<String> columns) {
        int last = plan.factors().size() - 1;
        Map<String, List<double[]>> lines = new LinkedHashMap<>();
        for (Map<String, Object> row : rows) {
            if (row.get(figure) instanceof Number y && row.get(columns.get(last)) instanceof Number x) {
                String name = last == 0 ? figure : named(plan.factors().get(0), row.get(columns.get(0)));
                lines.computeIfAbsent(name, n -> new ArrayList<>())
                        .add(new double[] {x.doubleValue(), y.doubleValue()});
            }
        }
        return lines.entrySet().stream()
                .limit(MOST_LINES)
                .map(line -> new StudyFigure.Line(line.getKey(), line.getValue()))
                .toList();
    }

    private static String named(Factor factor, Object value) {
        return value instanceof Number number
                ? StudyWords.named(factor.path()) + " " + StudyWords.measured(factor.path(), number.doubleValue())
                : String.valueOf(value);
    }
}
