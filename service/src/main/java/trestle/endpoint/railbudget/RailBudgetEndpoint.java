package trestle.endpoint.railbudget;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiRail;
import trestle.api.model.ApiRailBudgetAnswer;
import trestle.api.model.ApiRailBudgetRequest;
import trestle.api.model.ApiRailLoad;
import trestle.api.model.ApiRegulator;
import trestle.api.model.ApiWorking;
import trestle.endpoint.Calculation;
import trestle.endpoint.Done;
import trestle.endpoint.JudgementWriting;
import trestle.endpoint.Pointers;
import trestle.endpoint.Premises;
import trestle.endpoint.Reading;
import trestle.endpoint.WorkingWriting;
import trestle.figure.RailFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.rails.Rail;
import trestle.rails.RailBudget;
import trestle.rails.RailLoad;
import trestle.rails.RailPart;
import trestle.rails.RailTask;
import trestle.rails.RailWorkings;
import trestle.rails.Rails;
import trestle.rails.Supply;

/** The door of {@code /v1/rail-budget}: reads the request once, writes the answer once. */
public final class RailBudgetEndpoint
        implements Calculation<ApiRailBudgetRequest, RailTask, RailBudget, ApiRailBudgetAnswer> {
    private static final String SUPPLY = ApiRailBudgetRequest.SUPPLY.at("");
    private static final String RAILS = ApiRailBudgetRequest.RAILS.at("");

    private static final List<String> MODELS = List.of(
            "switching regulator: input power is output power over efficiency; linear: input current is output current"
                    + " (Horowitz and Hill, The Art of Electronics; from memory)",
            "peak: all loads whose peaks can fall together, while the rest work");

    private static final String SINGLE_POINT =
            "A rail that feeds servos or flight control is a single point of failure: try what the surfaces and the motor"
                    + " do when it goes, and test the fail-safe by switching the transmitter off on the ground,"
                    + " propeller off.";

    private static final List<String> CAUTIONS = List.of(
            "Before the first flight, feed each rail from the full pack on the bench, move every surface at once"
                    + " against a load, and measure the rail's voltage.",
            "A regulator that fails can pass the pack's voltage on: the data sheet and its"
                    + " maker's derating come before these numbers.");

    @Override
    public String name() {
        return "rail-budget";
    }

    @Override
    public Class<ApiRailBudgetRequest> requestType() {
        return ApiRailBudgetRequest.class;
    }

    @Override
    public RailTask read(ApiRailBudgetRequest request, Reading reading) {
        Optional<Supply> supply = RailReading.supply(request.supply(), SUPPLY, reading);
        Optional<List<Rail>> rails = RailReading.rails(request.rails(), RAILS, reading);
        reading.refuseContradictions();
        return new RailTask(supply.orElseThrow(), rails.orElseThrow());
    }

    @Override
    public RailBudget work(RailTask read) {
        return Rails.of(read);
    }

    @Override
    public ApiRailBudgetAnswer answer(Done<ApiRailBudgetRequest, RailTask, RailBudget> done) {
        return RailWriting.write(done.work(), judgement(done.work(), pointers(SUPPLY, RAILS)::to, done.assumed()));
    }

    @Override
    public List<ApiWorking> workings(Done<ApiRailBudgetRequest, RailTask, RailBudget> done) {
        return WorkingWriting.write(RailWorkings.of(done.read(), done.work()));
    }

    @Override
    public String figure(Done<ApiRailBudgetRequest, RailTask, RailBudget> done, Theme theme) {
        return RailFigure.of(done.read(), done.work(), theme);
    }

    public static ApiJudgement judgement(RailBudget budget, Function<Subject, String> place, Premises assumed) {
        return JudgementWriting.of(budget.judgement(), place, assumed, cautions(budget), MODELS);
    }

    private static List<String> cautions(RailBudget budget) {
        List<String> cautions = new ArrayList<>(CAUTIONS);
        if (budget.rails().stream().anyMatch(RailLoad::carriesTheFlight)) {
            cautions.add(SINGLE_POINT);
        }
        return cautions;
    }

    /** Where the parts of a budget stand, given the places of the supply and of the rails. */
    public static Pointers pointers(String supply, String rails) {
        String rail = rails + "/{}";
        String regulator = ApiRail.REGULATOR.at(rail);
        String loads = ApiRail.LOADS.at(rail);
        return new Pointers(Map.ofEntries(
                entry(RailPart.SUPPLY, supply),
                entry(RailPart.RAILS, rails),
                entry(RailPart.REGULATOR, regulator),
                entry(RailPart.MAX_CURRENT, ApiRegulator.MAX_CURRENT_A.at(regulator)),
                entry(RailPart.PEAK_CURRENT, ApiRegulator.PEAK_CURRENT_A.at(regulator)),
                entry(RailPart.INPUT_MIN, ApiRegulator.INPUT_MIN_V.at(regulator)),
                entry(RailPart.INPUT_MAX, ApiRegulator.INPUT_MAX_V.at(regulator)),
                entry(RailPart.LOADS, loads),
                entry(RailPart.PEAK_OF_LOAD, ApiRailLoad.PEAK_A.at(loads + "/{}"))));
    }
}
