package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;
import trestle.units.Energy;
import trestle.units.Share;

/** Judges a cutoff: what it leaves in the cells, and whether it asks too much of them. */
final class CutoffChecks {
    /** Energy stranded under a cutoff, %, from which it is worth another setting. */
    private static final double STRANDED_PERCENT = 5;

    private final PackTask task;
    private final PackEnergy energy;

    private CutoffChecks(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
    }

    static void judge(PackTask task, PackEnergy energy, Judge judge) {
        CutoffChecks checks = new CutoffChecks(task, energy);
        Subject cutoff = Subject.of(PackPart.CUTOFF);
        judge.check("energy-below-cutoff", "energy left below the cutoff", cutoff, checks::stranded);
        judge.essential("cutoff-against-minimum", "cutoff against the cells' minimum", cutoff, checks::minimum);
    }

    private void stranded(Trial trial) {
        double percent = Share.percentFromFraction(energy.budget().strandedFraction());
        trial.of(percent, "%")
                .atMost(STRANDED_PERCENT, Basis.COMMON_PRACTICE)
                .attentionIf(
                        percent >= STRANDED_PERCENT,
                        "cutoff-strands-energy",
                        "The cutoff of %.1f V (%.2f V a cell) leaves %.0f Wh, %.0f %%, that the cells would still"
                                + " give at this load down to their minimum voltage.",
                        energy.cutoffVoltageV(),
                        energy.cutoffVoltageV() / energy.ratings().seriesCount(),
                        Energy.whFromJ(energy.budget().strandedEnergyJ()),
                        percent);
    }

    private void minimum(Trial trial) {
        double minimumV = new Cutoff.CellMinimum().packVoltageV(task.pack());
        trial.of(energy.cutoffVoltageV(), "V")
                .atLeast(minimumV, PackChecks.DATA_SHEETS)
                .attention(
                        "cutoff-below-minimum",
                        "The cutoff of %.1f V lies below the sum of the cells' minimum voltages, %.1f V: the pack"
                                + " wears fast, and a weak cell is harmed.",
                        energy.cutoffVoltageV(),
                        minimumV);
    }
}
