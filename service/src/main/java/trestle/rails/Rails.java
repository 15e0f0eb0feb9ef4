package trestle.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Judge;
import trestle.finding.Subject;

/** The budget of the regulated rails. */
public final class Rails {
    private Rails() {}

    /**
     * Adds up what each rail carries and draws, and judges it.
     *
     * @param task pack and rails
     * @return the budget
     */
    public static RailBudget of(RailTask task) {
        List<RailLoad> loads = new ArrayList<>();
        Judge judge = new Judge();
        for (int i = 0; i < task.rails().size(); i++) {
            Rail rail = task.rails().get(i);
            RailLoad load = load(rail, task.supply());
            loads.add(load);
            RailChecks.judge(rail, load, task.supply(), i, judge);
        }
        assume(task, judge);
        return new RailBudget(
                loads,
                loads.stream().mapToDouble(RailLoad::inputPowerW).sum(),
                loads.stream().mapToDouble(RailLoad::peakInputPowerW).sum(),
                judge.judgement());
    }

    private static RailLoad load(Rail rail, Supply supply) {
        Regulator regulator = rail.regulator();
        double meanA = rail.meanA();
        double peakA = rail.peakA();
        double heatW = regulator.heatW(supply.fullVoltageV(), meanA);
        return new RailLoad(
                rail.name(),
                meanA,
                peakA,
                meanA / regulator.maxCurrentA(),
                peakA / regulator.peakRatingA(),
                heatW,
                regulator.inputCurrentA(supply.lowestVoltageV(), meanA),
                regulator.inputCurrentA(supply.lowestVoltageV(), peakA),
                powerW(regulator, supply, meanA),
                powerW(regulator, supply, peakA),
                supply.fullVoltageV() <= regulator.inputMaxV() && supply.lowestVoltageV() >= regulator.leastInputV(),
                regulator.cooling().isPresent()
                        ? OptionalDouble.of(regulator.cooling().get().temperatureK(heatW))
                        : OptionalDouble.empty(),
                rail.carriesTheFlight());
    }

    private static double powerW(Regulator regulator, Supply supply, double currentA) {
        return regulator.conversion().inputPowerW(supply.fullVoltageV(), regulator.outputVoltageV(), currentA);
    }

    private static void assume(RailTask task, Judge judge) {
        Subject rails = Subject.of(RailPart.RAILS);
        judge.assume(
                rails,
                "input currents at the pack's lowest voltage, heat and power at its full voltage",
                "each is greatest there");
        boolean switching =
                task.rails().stream().anyMatch(r -> r.regulator().conversion() instanceof Conversion.Switching);
        if (switching) {
            judge.assume(
                    rails, "a switching regulator has one efficiency at all loads", "no efficiency curve is given");
        }
    }
}
