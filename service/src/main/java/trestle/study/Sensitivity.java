package trestle.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trestle.api.model.ApiEffect;
import trestle.api.model.ApiSensitiveFigure;
import trestle.api.model.ApiSensitivityAnswer;
import trestle.api.model.ApiSensitivityRequest;
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

/** The door of {@code /v1/sensitivity}. */
public final class Sensitivity
        implements Calculation<ApiSensitivityRequest, SensitivityTask, SensitivityResult, ApiSensitivityAnswer> {
    private static final String AT = ApiSensitivityRequest.AT.at("");
    private static final List<String> MODELS = List.of("central differences, one number at a time");

    private final Setup setup;

    /**
     * A study over the calculations of a catalogue.
     *
     * @param lookup finds a calculation by its name
     */
    public Sensitivity(Function<String, Calculation<?, ?, ?, ?>> lookup) {
        this.setup = new Setup(lookup);
    }

    @Override
    public String name() {
        return "sensitivity";
    }

    @Override
    public Class<ApiSensitivityRequest> requestType() {
        return ApiSensitivityRequest.class;
    }

    @Override
    public SensitivityTask read(ApiSensitivityRequest request, Reading reading) {
        Studied<?, ?, ?> studied = setup.of(
                request.calculation(),
                request.base(),
                request.reviewPart(),
                request.reviewRun(),
                Setup.Wanted.of(request.pick(), ApiSensitivityRequest.PICK.at("")));
        List<FieldPath> numbers = new ArrayList<>();
        if (request.at() == null) {
            numbers.addAll(Numbers.of(studied));
        } else {
            for (int i = 0; i < request.at().size(); i++) {
                String place = AT + "/" + i;
                FieldPath path = Setup.place(studied, request.at().get(i), place);
                if (studied.number(path).isEmpty()) {
                    reading.fault(place, "no_number", "the base has no number there to move");
                }
                numbers.add(path);
            }
            reading.refuseContradictions();
        }
        Price.check(studied, 1 + 4.0 * numbers.size(), AT);
        return new SensitivityTask(studied, numbers);
    }

    @Override
    public SensitivityResult work(SensitivityTask read) {
        return SensitivityResult.of(read);
    }

    @Override
    public ApiSensitivityAnswer answer(Done<ApiSensitivityRequest, SensitivityTask, SensitivityResult> done) {
        Pointers pointers = new Pointers(Map.of(StudyPart.PICKS, ApiSensitivityRequest.PICK.at("")));
        return ApiSensitivityAnswer.builder()
                .judgement(JudgementWriting.of(
                        done.work().judgement(), pointers::to, done.assumed(), StudyWords.CAUTIONS, MODELS))
                .runs(done.work().runs())
                .figures(done.work().figures().stream().map(Sensitivity::figure).toList())
                .build();
    }

    private static ApiSensitiveFigure figure(SensitivityResult.Figure figure) {
        return ApiSensitiveFigure.builder()
                .pick(figure.pick().pointer())
                .value(Writing.boxed(figure.value()))
                .effects(figure.effects().stream().map(Sensitivity::effect).toList())
                .build();
    }

    private static ApiEffect effect(SensitivityResult.Effect effect) {
        return ApiEffect.builder()
                .at(effect.at().pointer())
                .value(effect.value())
                .changePerPercent(Writing.boxed(effect.percentPerPercent()))
                .changePerUnit(Writing.boxed(effect.perUnit()))
                .low(Writing.boxed(effect.low()))
                .high(Writing.boxed(effect.high()))
                .build();
    }

    @Override
    public List<ApiWorking> workings(Done<ApiSensitivityRequest, SensitivityTask, SensitivityResult> done) {
        Chain chain = new Chain();
        chain.given("n", "numbers that are moved", done.read().numbers().size(), "1");
        chain.step("N", "runs", done.work().runs(), "1", "1+4*n", Chain.ARITHMETIC);
        return WorkingWriting.write(chain.lines());
    }

    @Override
    public String figure(Done<ApiSensitivityRequest, SensitivityTask, SensitivityResult> done, Theme theme) {
        SensitivityResult.Figure first = done.work().figures().get(0);
        List<StudyFigure.Effect> effects = first.effects().stream()
                .filter(effect -> Math.abs(effect.percentPerPercent().orElse(0)) > 0)
                .map(effect -> new StudyFigure.Effect(
                        effect.at().dotted(), effect.percentPerPercent().getAsDouble()))
                .toList();
        String value = first.value().isPresent()
                ? StudyWords.measured(first.pick(), first.value().getAsDouble())
                : "without a value";
        return StudyFigure.bars(
                "What moves " + StudyWords.named(first.pick()),
                "It is " + value + " as the request stands.",
                done.work().judgement().findings(),
                effects,
                theme);
    }
}
