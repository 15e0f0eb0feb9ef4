package trestle.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;
import trestle.units.Energy;
import trestle.units.Share;

/** Judges a cutoff: what it leaves in the cells, and whether it asks too much of them. */
final class CutoffFindings {
    /** Energy stranded under a cutoff, %, from which it is worth another setting. */
    private static final double STRANDED_PERCENT = 5;

    private final PackTask task;
    private final PackEnergy energy;
    private final List<Finding> found = new ArrayList<>();

    private CutoffFindings(PackTask task, PackEnergy energy) {
        this.task = task;
        this.energy = energy;
    }

    static List<Finding> of(PackTask task, PackEnergy energy) {
        CutoffFindings draft = new CutoffFindings(task, energy);
        draft.stranded();
        draft.belowMinimum();
        return draft.found;
    }

    private void stranded() {
        double percent = Share.percentFromFraction(energy.budget().strandedFraction());
        if (percent >= STRANDED_PERCENT) {
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "cutoff-strands-energy",
                    Subject.of(PackPart.CUTOFF),
                    percent,
                    STRANDED_PERCENT,
                    text(
                            "The cutoff of %.1f V (%.2f V a cell) leaves %.0f Wh, %.0f %%, that the cells would still"
                                    + " give at this load down to their minimum voltage.",
                            energy.cutoffVoltageV(),
                            energy.cutoffVoltageV() / energy.ratings().seriesCount(),
                            Energy.whFromJ(energy.budget().strandedEnergyJ()),
                            percent)));
        }
    }

    private void belowMinimum() {
        double minimumV = new Cutoff.CellMinimum().packVoltageV(task.pack());
        if (energy.cutoffVoltageV() < minimumV) {
            found.add(Finding.of(
                    Severity.ATTENTION,
                    "cutoff-below-minimum",
                    Subject.of(PackPart.CUTOFF),
                    energy.cutoffVoltageV(),
                    minimumV,
                    text(
                            "The cutoff of %.1f V lies below the sum of the cells' minimum voltages, %.1f V: the pack"
                                    + " wears fast, and a weak cell is harmed.",
                            energy.cutoffVoltageV(), minimumV)));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
