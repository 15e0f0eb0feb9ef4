package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Works out an {@link EnergyBudget} from a discharge, running on below the cutoff. */
final class BudgetDraft {
    private BudgetDraft() {}

    static EnergyBudget of(PackTask task, Discharge discharge, List<CurvePoint> points) {
        Load goesOn = goesOn(task);
        double usableJ = discharge.energyJ();
        double usableC = discharge.chargeC();
        PackState atCutoff = discharge.end();
        if (discharge.ending() == DischargeEnd.PROFILE_END) {
            Discharge rest = Discharge.of(atCutoff, goesOn, task.cutoff());
            usableJ += rest.energyJ();
            usableC += rest.chargeC();
            atCutoff = rest.end();
        }
        double reserveJ = usableJ * task.reserveFraction();
        return new EnergyBudget(
                usableJ,
                usableC,
                reserveJ,
                Discharge.of(atCutoff, goesOn, new Cutoff.CellMinimum()).energyJ(),
                discharge.durationS(),
                timeOf(usableJ - reserveJ, discharge, points));
    }

    /**
     * The highest pack voltage, in tenths of a volt, below which the load leaves less than a share of all it could
     * draw.
     *
     * @param task pack and load
     * @param discharge the discharge to the present cutoff
     * @param fraction share, 0 to 1
     * @return voltage, V; empty where no voltage below the present cutoff leaves so little
     */
    static OptionalDouble cutoffLeaving(PackTask task, Discharge discharge, double fraction) {
        Load goesOn = goesOn(task);
        Discharge rest = discharge.ending() == DischargeEnd.PROFILE_END
                ? Discharge.of(discharge.end(), goesOn, task.cutoff())
                : discharge;
        double aboveJ = discharge.energyJ() + (rest == discharge ? 0 : rest.energyJ());
        List<CurvePoint> below = new ArrayList<>();
        Limits limits = Limits.of(new Cutoff.CellMinimum(), task.pack());
        double belowJ = Discharge.of(rest.end(), goesOn, limits, now -> below.add(CurvePoint.of(now)))
                .energyJ();
        double leavesJ = fraction * (aboveJ + belowJ);
        return below.stream()
                .filter(it -> it.energyJ() > 0 && belowJ - it.energyJ() < leavesJ)
                .mapToDouble(it -> Math.floor(it.voltageV() * 10) / 10)
                .findFirst();
    }

    /** Mean power of the load; of a current at the pack's nominal voltage, W. */
    static double meanPowerW(PackTask task) {
        if (task.load() instanceof Load.Profile profile) {
            return profile.meanPowerW();
        }
        if (task.load() instanceof Load.Current current) {
            return current.currentA() * task.pack().nominalVoltageV();
        }
        return ((Load.Power) task.load()).powerW();
    }

    /** The same load; after a profile, its mean power. */
    private static Load goesOn(PackTask task) {
        return task.load() instanceof Load.Profile profile ? new Load.Power(profile.meanPowerW()) : task.load();
    }

    /** Time by which an energy is delivered, s; the whole time where it never is. */
    private static double timeOf(double energyJ, Discharge discharge, List<CurvePoint> points) {
        for (int i = 1; i < points.size(); i++) {
            CurvePoint from = points.get(i - 1);
            CurvePoint to = points.get(i);
            if (to.energyJ() >= energyJ && to.energyJ() > from.energyJ()) {
                double share = (energyJ - from.energyJ()) / (to.energyJ() - from.energyJ());
                return Math.min(from.timeS() + share * (to.timeS() - from.timeS()), discharge.durationS());
            }
        }
        return discharge.durationS();
    }
}
