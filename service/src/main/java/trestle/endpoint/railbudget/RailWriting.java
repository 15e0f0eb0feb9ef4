package trestle.endpoint.railbudget;

import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiRailBudgetAnswer;
import trestle.api.model.ApiRailResult;
import trestle.endpoint.Writing;
import trestle.rails.RailBudget;
import trestle.rails.RailLoad;
import trestle.units.Share;
import trestle.units.Temperature;

/** Writes a budget of rails into its answer. */
public final class RailWriting {
    private RailWriting() {}

    public static ApiRailBudgetAnswer write(RailBudget budget, ApiJudgement judgement) {
        return ApiRailBudgetAnswer.builder()
                .judgement(judgement)
                .rails(budget.rails().stream().map(RailWriting::rail).toList())
                .systemsPowerW(budget.systemsPowerW())
                .peakPowerW(budget.peakPowerW())
                .build();
    }

    private static ApiRailResult rail(RailLoad rail) {
        return ApiRailResult.builder()
                .name(rail.name())
                .typicalA(rail.typicalA())
                .peakA(rail.peakA())
                .loadPercent(Share.percentFromFraction(rail.loadFraction()))
                .peakLoadPercent(Share.percentFromFraction(rail.peakLoadFraction()))
                .heatW(rail.heatW())
                .temperatureC(Writing.in(rail.temperatureK(), Temperature::cFromK))
                .inputCurrentA(rail.inputCurrentA())
                .peakInputCurrentA(rail.peakInputCurrentA())
                .inputPowerW(rail.inputPowerW())
                .peakInputPowerW(rail.peakInputPowerW())
                .inputWithinRange(rail.inputWithinRange())
                .build();
    }
}
