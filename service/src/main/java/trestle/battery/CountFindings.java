package trestle.battery;

import java.util.List;
import java.util.Locale;
import trestle.finding.Finding;
import trestle.finding.Severity;
import trestle.finding.Subject;

/** Judges what a controller that counts cells makes of a pack. */
final class CountFindings {
    private CountFindings() {}

    static List<Finding> of(PackTask task, PackState start) {
        Pack pack = task.pack();
        if (task.cutoff() instanceof Cutoff.CountedCells counted) {
            return counted.cellCount() == pack.seriesCount()
                    ? List.of()
                    : List.of(misread(pack, counted.voltageV(), counted.cellCount(), "counts"));
        }
        if (task.cutoff() instanceof Cutoff.CellVoltage atCell) {
            return List.of(guessed(pack, atCell.voltageV(), start.restVoltageV()));
        }
        return List.of();
    }

    /** The count nobody gave: at full and at the present state of charge, by either divisor. */
    private static Finding guessed(Pack pack, double settingV, double restV) {
        int series = pack.seriesCount();
        int fullLow = CellCount.of(pack.fullVoltageV(), CellCount.HIGH_DIVISOR_V);
        int fullHigh = CellCount.of(pack.fullVoltageV(), CellCount.LOW_DIVISOR_V);
        int nowLow = CellCount.of(restV, CellCount.HIGH_DIVISOR_V);
        int nowHigh = CellCount.of(restV, CellCount.LOW_DIVISOR_V);
        if (nowLow < series) {
            return misread(pack, settingV, nowLow, "may count");
        }
        if (nowHigh > series) {
            return misread(pack, settingV, nowHigh, "may count");
        }
        if (fullLow < series || fullHigh > series) {
            int wrong = fullLow < series ? fullLow : fullHigh;
            return misread(pack, settingV, wrong, "may count, when the pack is full,");
        }
        return Finding.of(
                Severity.NOTE,
                "cell-count",
                Subject.of(PackPart.COUNTED_CELLS),
                series,
                series,
                String.format(
                        Locale.ROOT,
                        "A controller that counts cells finds %d, full or at the present %.1f V, and cuts at %.1f V.",
                        series,
                        restV,
                        series * settingV));
    }

    private static Finding misread(Pack pack, double settingV, int count, String verb) {
        int series = pack.seriesCount();
        double cutV = count * settingV;
        double perCellV = cutV / series;
        boolean harmful =
                pack.segments().stream().anyMatch(it -> perCellV < it.cell().minimumVoltageV());
        String what = count < series ? "too late" : "early and strands energy";
        return Finding.of(
                harmful ? Severity.STOP : Severity.ATTENTION,
                "cell-count-misread",
                Subject.of(PackPart.COUNTED_CELLS),
                count,
                series,
                String.format(
                        Locale.ROOT,
                        "A controller %s %d cells instead of %d and then cuts at %.1f V, %.2f V a"
                                + " cell: %s; set the count or the pack voltage by hand.",
                        verb,
                        count,
                        series,
                        cutV,
                        perCellV,
                        what));
    }
}
