package trestle.battery;

import trestle.finding.Basis;
import trestle.finding.Judge;
import trestle.finding.Subject;
import trestle.finding.Trial;

/** Judges what a controller that counts cells makes of a pack. */
final class CountChecks {
    private final PackTask task;
    private final double restV;
    private final int series;

    private CountChecks(PackTask task, PackState start) {
        this.task = task;
        this.restV = start.restVoltageV();
        this.series = task.pack().seriesCount();
    }

    static void judge(PackTask task, PackState start, Judge judge) {
        CountChecks checks = new CountChecks(task, start);
        judge.essential(
                "cell-count", "cells that the controller counts", Subject.of(PackPart.COUNTED_CELLS), checks::count);
    }

    private void count(Trial trial) {
        if (task.cutoff() instanceof Cutoff.CountedCells counted) {
            misread(trial.of(counted.cellCount(), "cells"), counted.voltageV(), counted.cellCount(), "counts");
        } else if (task.cutoff() instanceof Cutoff.CellVoltage atCell) {
            guessed(trial, atCell.voltageV());
        }
    }

    /** The count nobody gave: at full and at the present state of charge, by either divisor. */
    private void guessed(Trial trial, double settingV) {
        int fullLow = CellCount.of(task.pack().fullVoltageV(), CellCount.HIGH_DIVISOR_V);
        int fullHigh = CellCount.of(task.pack().fullVoltageV(), CellCount.LOW_DIVISOR_V);
        int nowLow = CellCount.of(restV, CellCount.HIGH_DIVISOR_V);
        int nowHigh = CellCount.of(restV, CellCount.LOW_DIVISOR_V);
        if (nowLow < series) {
            misread(trial, settingV, nowLow, "may count");
        } else if (nowHigh > series) {
            misread(trial, settingV, nowHigh, "may count");
        } else if (fullLow < series || fullHigh > series) {
            misread(trial, settingV, fullLow < series ? fullLow : fullHigh, "may count, when the pack is full,");
        } else {
            trial.of(series, "cells")
                    .atLeast(series, Basis.COMMON_PRACTICE)
                    .noteIf(
                            true,
                            "cell-count",
                            "A controller that counts cells finds %d, full or at the present %.1f V, and cuts at"
                                    + " %.1f V.",
                            series,
                            restV,
                            series * settingV);
        }
    }

    private void misread(Trial trial, double settingV, int count, String verb) {
        double cutV = count * settingV;
        double perCellV = cutV / series;
        boolean harmful = task.pack().segments().stream()
                .anyMatch(it -> perCellV < it.cell().minimumVoltageV());
        String sentence = "A controller %s %d cells instead of %d and then cuts at %.1f V, %.2f V a"
                + " cell: %s; set the count or the pack voltage by hand.";
        String what = count < series ? "too late" : "early and strands energy";
        boolean wrong = count != series;
        trial.of(count, "cells")
                .atLeast(series, Basis.COMMON_PRACTICE)
                .stopIf(wrong && harmful, "cell-count-misread", sentence, verb, count, series, cutV, perCellV, what)
                .attentionIf(wrong, "cell-count-misread", sentence, verb, count, series, cutV, perCellV, what);
    }
}
