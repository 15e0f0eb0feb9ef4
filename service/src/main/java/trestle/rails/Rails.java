package trestle.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trestle.finding.Assumption;
import trestle.finding.Finding;
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
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < task.rails().size(); i++) {
            Rail rail = task.rails().get(i);
            RailLoad load = load(rail, task.supply());
            loads.add(load);
            findings.addAll(RailFindings.of(rail, load, task.supply(), i));
        }
        return new RailBudget(
                loads,
                loads.stream().mapToDouble(RailLoad::inputPowerW).sum(),
                loads.stream().mapToDouble(RailLoad::peakInputPowerW).sum(),
                findings,
                assumptions(task));
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
                        : OptionalDouble.empty());
    }

    private static double powerW(Regulator regulator, Supply supply, double currentA) {
        return regulator.conversion().inputPowerW(supply.fullVoltageV(), regulator.outputVoltageV(), currentA);
    }

    private static List<Assumption> assumptions(RailTask task) {
        List<Assumption> assumptions = new ArrayList<>();
        assumptions.add(new Assumption(
                Subject.of(RailPart.RAILS),
                "input currents at the pack's lowest voltage, heat and power at its full" + " voltage",
                "each is greatest there"));
        boolean switching =
                task.rails().stream().anyMatch(r -> r.regulator().conversion() instanceof Conversion.Switching);
        if (switching) {
            assumptions.add(new Assumption(
                    Subject.of(RailPart.RAILS),
                    "a switching regulator has one efficiency at all loads",
                    "no efficiency curve is given"));
        }
        return assumptions;
    }
}
