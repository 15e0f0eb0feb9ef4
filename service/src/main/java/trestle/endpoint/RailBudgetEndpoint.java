package trestle.endpoint;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trestle.api.model.Judgement;
import trestle.api.model.RailBudgetAnswer;
import trestle.api.model.RailBudgetRequest;
import trestle.api.model.Working;
import trestle.figure.RailFigure;
import trestle.figure.Theme;
import trestle.finding.Subject;
import trestle.rails.Rail;
import trestle.rails.RailBudget;
import trestle.rails.RailPart;
import trestle.rails.RailTask;
import trestle.rails.RailWorkings;
import trestle.rails.Rails;
import trestle.rails.Supply;

/** The door of {@code /v1/rail-budget}: reads the request once, writes the answer once. */
final class RailBudgetEndpoint
        implements Calculation<RailBudgetRequest, RailBudgetAnswer>,
                Drawn<RailBudgetRequest>,
                Worked<RailBudgetRequest> {
    private static final List<String> MODELS = List.of(
            "switching regulator: input power is output power over efficiency; linear: input current is output current"
                    + " (Horowitz and Hill, The Art of Electronics; from memory)",
            "peak: all loads whose peaks can fall together, while the rest work");

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
    public Class<RailBudgetRequest> requestType() {
        return RailBudgetRequest.class;
    }

    @Override
    public RailBudgetAnswer answer(RailBudgetRequest request) {
        Reading reading = new Reading();
        RailBudget budget = Rails.of(read(request, reading));
        return RailWriting.write(budget, judgement(budget, pointers("/supply", "/rails")::to, reading));
    }

    @Override
    public List<Working> workings(RailBudgetRequest request) {
        RailTask task = read(request, new Reading());
        return WorkingWriting.write(RailWorkings.of(task, Rails.of(task)));
    }

    @Override
    public String figure(RailBudgetRequest request, Theme theme) {
        RailTask task = read(request, new Reading());
        return RailFigure.of(task, Rails.of(task), theme);
    }

    static Judgement judgement(RailBudget budget, Function<Subject, String> place, Reading reading) {
        return Judge.of(budget.findings(), budget.assumptions(), place, reading, CAUTIONS, MODELS);
    }

    private static RailTask read(RailBudgetRequest request, Reading reading) {
        Optional<Supply> supply = RailReading.supply(request.supply(), "/supply", reading);
        Optional<List<Rail>> rails = RailReading.rails(request.rails(), "/rails", reading);
        reading.refuseContradictions();
        return new RailTask(supply.orElseThrow(), rails.orElseThrow());
    }

    /** Where the parts of a budget stand, given the places of the supply and of the rails. */
    static Pointers pointers(String supply, String rails) {
        String regulator = rails + "/{}/regulator";
        return new Pointers(Map.ofEntries(
                entry(RailPart.SUPPLY, supply),
                entry(RailPart.RAILS, rails),
                entry(RailPart.REGULATOR, regulator),
                entry(RailPart.MAX_CURRENT, regulator + "/max_current_a"),
                entry(RailPart.PEAK_CURRENT, regulator + "/peak_current_a"),
                entry(RailPart.INPUT_MIN, regulator + "/input_min_v"),
                entry(RailPart.INPUT_MAX, regulator + "/input_max_v"),
                entry(RailPart.LOADS, rails + "/{}/loads"),
                entry(RailPart.PEAK_OF_LOAD, rails + "/{}/loads/{}/peak_a")));
    }
}
