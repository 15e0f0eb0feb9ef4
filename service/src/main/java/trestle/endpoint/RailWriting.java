package trestle.endpoint;

import trestle.api.model.Judgement;
import trestle.api.model.RailBudgetAnswer;
import trestle.api.model.RailResult;
import trestle.rails.RailBudget;
import trestle.rails.RailLoad;
import trestle.units.Share;
import trestle.units.Temperature;

/** Writes a budget of rails into its answer. */
final class RailWriting {
    private RailWriting() {}

    static RailBudgetAnswer write(RailBudget budget, Judgement judgement) {
        return RailBudgetAnswer.builder()
                .judgement(judgement)
                .rails(budget.rails().stream().map(RailWriting::rail).toList())
                .systemsPowerW(budget.systemsPowerW())
                .peakPowerW(budget.peakPowerW())
                .build();
    }

    private static RailResult rail(RailLoad rail) {
        return RailResult.builder()
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
